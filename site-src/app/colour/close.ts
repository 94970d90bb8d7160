// Whether two colours are hard to tell apart, for full colour vision and for three kinds of colour
// blindness. The same formulas as the generator's package colour, and held equal to it by its table
// of values; sources are named there: OKLab (Ottosson), deltaEOK (CSS Color 4), dichromacies
// (Machado, Oliveira and Fernandes 2009), contrast (WCAG 2).
type Triple = [number, number, number];
type Matrix = [Triple, Triple, Triple];

/**
 * The difference (deltaEOK) under which two pencils are called too close. Ours; no standard gives a
 * figure.
 */
export const CLOSE_BELOW = 0.08;

// The matrices were published to six places: a view must bring colours nearer by more than that to
// be named.
const ROUNDING = 2e-6;

const TO_LMS: Matrix = [
  [0.4122214708, 0.5363325363, 0.0514459929],
  [0.2119034982, 0.6806995451, 0.1073969566],
  [0.0883024619, 0.2817188376, 0.6299787005],
];
const TO_LAB: Matrix = [
  [0.2104542553, 0.793617785, -0.0040720468],
  [1.9779984951, -2.428592205, 0.4505937099],
  [0.0259040371, 0.7827717662, -0.808675766],
];
const FROM_LMS: Matrix = [
  [4.0767416621, -3.3077115913, 0.2309699292],
  [-1.2684380046, 2.6097574011, -0.3413193965],
  [-0.0041960863, -0.7034186147, 1.707614701],
];
const FROM_LAB: Matrix = [
  [1, 0.3963377774, 0.2158037573],
  [1, -0.1055613458, -0.0638541728],
  [1, -0.0894841775, -1.291485548],
];

/** A way of seeing. */
export type Eyes = 'full colour' | 'protanopia' | 'deuteranopia' | 'tritanopia';

export const VIEWS: { name: Eyes; matrix: Matrix }[] = [
  {
    name: 'full colour',
    matrix: [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ],
  },
  {
    name: 'protanopia',
    matrix: [
      [0.152286, 1.052583, -0.204868],
      [0.114503, 0.786281, 0.099216],
      [-0.003882, -0.048116, 1.051998],
    ],
  },
  {
    name: 'deuteranopia',
    matrix: [
      [0.367322, 0.860646, -0.227968],
      [0.280085, 0.672501, 0.047413],
      [-0.01182, 0.04294, 0.968881],
    ],
  },
  {
    name: 'tritanopia',
    matrix: [
      [1.255528, -0.076749, -0.178779],
      [-0.078411, 0.930809, 0.147602],
      [0.004733, 0.691367, 0.3039],
    ],
  },
];

const mul = (m: Matrix, v: Triple): Triple =>
  m.map((r) => r[0] * v[0] + r[1] * v[1] + r[2] * v[2]) as Triple;
const each = (v: Triple, f: (x: number) => number): Triple => v.map(f) as Triple;
const clip = (v: Triple) => each(v, (x) => Math.min(1, Math.max(0, x)));

/** Linear-light sRGB of #rrggbb, the one form accepted. */
export function parse(hex: string): Triple {
  const m = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(hex);
  if (!m) throw new RangeError(`colour "${hex}": want # and six hexadecimal digits`);
  return each([m[1], m[2], m[3]].map((x) => parseInt(x!, 16) / 255) as Triple, (v) =>
    v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4,
  );
}

const toLab = (rgb: Triple): Triple => mul(TO_LAB, each(mul(TO_LMS, rgb), Math.cbrt));
const fromLab = (lab: Triple): Triple =>
  mul(
    FROM_LMS,
    each(mul(FROM_LAB, lab), (x) => x ** 3),
  );
/** The OKLab colour as view i sees it. */
export const seen = (hex: string, i: number): Triple =>
  toLab(clip(mul(VIEWS[i]!.matrix, parse(hex))));

const write = (rgb: Triple) =>
  `#${clip(rgb)
    .map((v) =>
      Math.round(255 * (v <= 0.0031308 ? v * 12.92 : 1.055 * v ** (1 / 2.4) - 0.055))
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;

/** How far apart two colours are as view i sees them (deltaEOK). */
export function difference(a: string, b: string, i: number): number {
  const x = seen(a, i);
  const y = seen(b, i);
  return Math.hypot(x[0] - y[0], x[1] - y[1], x[2] - y[2]);
}

/**
 * Which way of seeing brings two colours nearest, how far apart they are then, and whether that is
 * too close.
 */
export function tooClose(a: string, b: string): { which: Eyes; diff: number; close: boolean } {
  let which: Eyes = 'full colour';
  let diff = Infinity;
  VIEWS.forEach((v, i) => {
    const d = difference(a, b, i);
    if (i === 0 || d < diff - ROUNDING) {
      which = v.name;
      diff = d;
    }
  });
  return { which, diff, close: diff < CLOSE_BELOW };
}

export const luminance = (hex: string) => {
  const [r, g, b] = parse(hex);
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

/** WCAG 2's contrast ratio, 1 to 21; text wants 4.5. */
export function contrast(a: string, b: string): number {
  const x = luminance(a) + 0.05;
  const y = luminance(b) + 0.05;
  return Math.max(x, y) / Math.min(x, y);
}

/** The same hue, made lighter until it is read on dark paper. */
export function forDark(hex: string, paper: string): string {
  const lab = toLab(parse(hex));
  for (let l = lab[0], out = hex; ; l += 0.02) {
    out = l === lab[0] ? hex : write(fromLab([l, lab[1], lab[2]]));
    if (contrast(out, paper) >= 4.5 || l >= 1) return out;
  }
}
