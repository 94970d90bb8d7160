// A link as a QR picture (ISO/IEC 18004), by lean-qr.
import { correction, generate } from 'lean-qr';
import { toSvgPath } from 'lean-qr/extras/svg';

/** The modules of a side, without the quiet zone, and their outline as the data of an SVG path. */
export interface Picture {
  size: number;
  path: string;
}

/** Modules of quiet that the standard asks for on each side. */
export const QUIET = 4;

/** At least level M, so that a crease or a thumb over it does no harm; undefined if too long. */
export function picture(text: string): Picture | undefined {
  try {
    const code = generate(text, { minCorrectionLevel: correction.M });
    return { size: code.size, path: toSvgPath(code) };
  } catch {
    return undefined;
  }
}
