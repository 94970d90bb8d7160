// Whether two colours are hard to tell apart, for full colour vision and for three kinds of colour blindness.
// The same formulas as the generator's package colour, and held equal to it by its table of values; sources are named there:
// OKLab (Ottosson), deltaEOK (CSS Color 4), dichromacies (Machado, Oliveira and Fernandes 2009), contrast (WCAG 2).
type Triple = [number, number, number];
type Matrix = [Triple, Triple, Triple];

/** The difference (deltaEOK) under which two pencils are called too close. Ours; no standard gives a figure. */
export const CLOSE_BELOW = .08;

// The matrices were published to six places: a view must bring colours nearer by more than that to be named.
const ROUNDING = 2e-6;

const TO_LMS: Matrix = [[.4122214708, .5363325363, .0514459929], [.2119034982, .6806995451, .1073969566], [.0883024619, .2817188376, .6299787005]];
const TO_LAB: Matrix = [[.2104542553, .7936177850, -.0040720468], [1.9779984951, -2.4285922050, .4505937099], [.0259040371, .7827717662, -.8086757660]];
const FROM_LMS: Matrix = [[4.0767416621, -3.3077115913, .2309699292], [-1.2684380046, 2.6097574011, -.3413193965], [-.0041960863, -.7034186147, 1.7076147010]];
const FROM_LAB: Matrix = [[1, .3963377774, .2158037573], [1, -.1055613458, -.0638541728], [1, -.0894841775, -1.2914855480]];

/** A way of seeing. */
export type Eyes = 'full colour' | 'protanopia' | 'deuteranopia' | 'tritanopia';

export const VIEWS: { name: Eyes; matrix: Matrix }[] = [
  { name: 'full colour', matrix: [[1, 0, 0], [0, 1, 0], [0, 0, 1]] },
  { name: 'protanopia', matrix: [[.152286, 1.052583, -.204868], [.114503, .786281, .099216], [-.003882, -.048116, 1.051998]] },
  { name: 'deuteranopia', matrix: [[.367322, .860646, -.227968], [.280085, .672501, .047413], [-.011820, .042940, .968881]] },
  { name: 'tritanopia', matrix: [[1.255528, -.076749, -.178779], [-.078411, .930809, .147602], [.004733, .691367, .303900]] },
];

const mul = (m: Matrix, v: Triple): Triple => m.map((r) => r[0] * v[0] + r[1] * v[1] + r[2] * v[2]) as Triple;
const each = (v: Triple, f: (x: number) => number): Triple => v.map(f) as Triple;
const clip = (v: Triple) => each(v, (x) => Math.min(1, Math.max(0, x)));

/** Linear-light sRGB of #rrggbb, the one form accepted. */
export function parse(hex: string): Triple {
  const m = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(hex);
  if (!m) throw new RangeError(`colour "${hex}": want # and six hexadecimal digits`);
  return each([m[1], m[2], m[3]].map((x) => parseInt(x!, 16) / 255) as Triple, (v) => (v <= .04045 ? v / 12.92 : ((v + .055) / 1.055) ** 2.4));
}

export const toLab = (rgb: Triple): Triple => mul(TO_LAB, each(mul(TO_LMS, rgb), Math.cbrt));
const fromLab = (lab: Triple): Triple => mul(FROM_LMS, each(mul(FROM_LAB, lab), (x) => x ** 3));
/** The OKLab colour as view i sees it. */
export const seen = (hex: string, i: number): Triple => toLab(clip(mul(VIEWS[i]!.matrix, parse(hex))));

const write = (rgb: Triple) => `#${clip(rgb).map((v) => Math.round(255 * (v <= .0031308 ? v * 12.92 : 1.055 * v ** (1 / 2.4) - .055)).toString(16).padStart(2, '0')).join('')}`;

/** How far apart two colours are as view i sees them (deltaEOK). */
export function difference(a: string, b: string, i: number): number {
  const x = seen(a, i), y = seen(b, i);
  return Math.hypot(x[0] - y[0], x[1] - y[1], x[2] - y[2]);
}

/** Which way of seeing brings two colours nearest, how far apart they are then, and whether that is too close. */
export function tooClose(a: string, b: string): { which: Eyes; diff: number; close: boolean } {
  let which: Eyes = 'full colour', diff = Infinity;
  VIEWS.forEach((v, i) => {
    const d = difference(a, b, i);
    if (i === 0 || d < diff - ROUNDING) { which = v.name; diff = d; }
  });
  return { which, diff, close: diff < CLOSE_BELOW };
}

export const luminance = (hex: string) => { const [r, g, b] = parse(hex); return .2126 * r + .7152 * g + .0722 * b; };

/** WCAG 2's contrast ratio, 1 to 21; text wants 4.5. */
export function contrast(a: string, b: string): number {
  const x = luminance(a) + .05, y = luminance(b) + .05;
  return Math.max(x, y) / Math.min(x, y);
}

/** The same hue, made lighter until it is read on dark paper. */
export function forDark(hex: string, paper: string): string {
  const lab = toLab(parse(hex));
  for (let l = lab[0], out = hex; ; l += .02) {
    out = l === lab[0] ? hex : write(fromLab([l, lab[1], lab[2]]));
    if (contrast(out, paper) >= 4.5 || l >= 1) return out;
  }
}
