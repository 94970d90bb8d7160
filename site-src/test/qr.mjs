// Draws the data of an SVG path, and has a decoder that nobody here wrote read it: jsqr. Run alone
// it reads a picture in a file of RGBA bytes: node qr.mjs FILE WIDTH HEIGHT.
import { readFileSync } from 'node:fs';
import jsqr from 'jsqr';

/** The text of a QR picture, or undefined. */
export const readQR = (rgba, width, height) => jsqr(rgba, width, height)?.data;

/** The picture of a path of straight lines, of size units a side, with a margin around it. */
export function drawn({ size, path }, margin = 4, scale = 4) {
  const side = (size + 2 * margin) * scale;
  const rgba = new Uint8ClampedArray(side * side * 4).fill(255);
  // Upright edges: those to the left of a point say whether it is inside.
  const edges = path.split('M').flatMap((part) => {
    const points = (part.match(/-?[\d.]+/g) ?? []).map(Number);
    const n = points.length / 2;
    return Array.from({ length: n }, (_, i) => {
      const [x, y, x2, y2] = [0, 1, 2, 3].map((j) => points[(2 * i + j) % points.length]);
      return { x, x2, from: Math.min(y, y2), to: Math.max(y, y2) };
    });
  });
  for (const e of edges) if (e.x !== e.x2 && e.from !== e.to) throw new Error('a slanting line');
  for (let y = 0; y < side; y++) {
    const row = (y + 0.5) / scale - margin;
    const xs = edges.filter((e) => e.x === e.x2 && e.from < row && row < e.to).map((e) => e.x);
    for (let x = 0; x < side; x++) {
      const at = (x + 0.5) / scale - margin;
      if (xs.filter((e) => e < at).length % 2)
        rgba.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3);
    }
  }
  return { rgba, side };
}

if (process.argv[1] === new URL(import.meta.url).pathname) {
  const [, , file, width, height] = process.argv;
  process.stdout.write(readQR(new Uint8ClampedArray(readFileSync(file)), +width, +height) ?? '');
}
