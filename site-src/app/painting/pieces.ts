// What lies over and under a word beside its ranges: the shapes of its marks, and copies of the
// word cut to one letter where a range cannot colour that letter alone. All of it hangs on the
// word's baseline and is measured in letter sizes (em), so it stays right when the lines are laid
// anew, enlarged or printed.
import { standsOver } from '../text/letters.ts';
import type { Word } from '../types.ts';
import { ranges } from './highlights.ts';
import { DEEP, path, type Sign, THICK } from '../marking/signs.ts';
import type { Inked, Span } from '../marking/spans.ts';

/** A letter's place: from the word's right edge to the letter's, and how wide; in em. */
export interface Slot {
  at: number;
  wide: number;
}

/**
 * A copy of the word in colour, cut to a slot; below and above are heights over the baseline in em
 * beyond which nothing of it is seen.
 */
export interface Copy {
  slot: Slot;
  colour: string;
  below?: number;
  above?: number;
}

/**
 * A shape in colour, hung below the baseline, or above the height over; further from the letter by
 * the number of those before it.
 */
export interface Stroke {
  slot: Slot;
  sign: Sign;
  colour: string;
  over?: number;
  under?: number;
  key?: string | undefined;
}

/**
 * Where the letters of a word stand, in em: edge is how far right of the hook its right edge is;
 * crown and top are as in Sheet. Without top nothing is drawn above a small letter: its shape
 * stands below the one that bears it, unless that has its own.
 */
export interface Measure {
  edge: number;
  slot: (l: number) => Slot;
  crown: (l: number) => number;
  top?: (l: number) => number;
}

/**
 * Where the tops of shapes stand below the baseline, in hundredths of an em: clear of bowls and of
 * most vowels.
 */
const BELOW = 46;

const SVG = 'http://www.w3.org/2000/svg';
const em = (n: number) => `${Math.round(n * 1000) / 1000}em`;

/** A span of a class. What is drawn here is made by hand: pages of lessons carry no templates. */
function span(cls: string): HTMLElement {
  const el = document.createElement('span');
  el.className = cls;
  return el;
}

/**
 * A corner of a copy's cut: so far from the word's right edge, so high over the baseline; in em.
 */
const corner = (right: number, up: number) => `calc(100% - ${em(right)}) calc(100% - ${em(up)})`;

/** edge is how far right of the hook the word's right edge is, in em. */
function copy(text: string, c: Copy, edge: number): HTMLElement {
  const { slot, colour, below = -0.9, above = 1.7 } = c;
  const from = slot.at - 0.02;
  const to = slot.at + slot.wide + 0.02;
  const cut = [corner(from, above), corner(from, below), corner(to, below), corner(to, above)];
  const el = span('again');
  el.dataset.text = text;
  el.style.cssText = `color:${colour};right:${em(-edge)};clip-path:polygon(${cut.join()})`;
  return el;
}

/** Where a shape's left top corner is, in hundredths of an em. */
function placeOf({ slot, over, under = 0 }: Stroke, edge: number): { x: number; y: number } {
  const by = under * (DEEP + 2);
  return {
    x: 100 * (edge - slot.at - slot.wide),
    y: over === undefined ? BELOW + by : -100 * over - DEEP - by,
  };
}

/**
 * All shapes of a word as one drawing: a path a shape and colour. Its box is that of the letters
 * they stand under, so that it never makes a page wider.
 */
function drawing(strokes: Stroke[], edge: number): SVGElement {
  const svg = document.createElementNS(SVG, 'svg');
  const paths = new Map<string, { d: string; s: Stroke }>();
  const xs: number[] = [];
  const ys: number[] = [];
  for (const s of strokes) {
    const key = `${s.sign} ${s.colour}`;
    const one = paths.get(key) ?? { d: '', s };
    const { x, y } = placeOf(s, edge);
    one.d += path(s.sign, x, y, 100 * s.slot.wide);
    paths.set(key, one);
    xs.push(x, x + 100 * s.slot.wide);
    ys.push(y, y + DEEP);
  }
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  const [wide, high] = [Math.max(...xs) - x, Math.max(...ys) - y];
  svg.setAttribute('class', 'signs');
  svg.setAttribute('viewBox', `${x} ${y} ${wide} ${high}`);
  const [left, top, width, height] = [x, y, wide, high].map((n) => em(n / 100));
  svg.style.cssText = `left:${left};top:${top};width:${width};height:${height}`;
  for (const { d, s } of paths.values()) svg.append(stroke(d, s.sign, s.colour));
  return svg;
}

/** What is drawn on a word's baseline: letters once more, and shapes. */
export function bits(
  word: Word,
  shapes: Inked['shapes'],
  again: Inked['again'],
  m: Measure,
): HTMLElement {
  const base = span('base'); // a place on the baseline, without extent
  base.ariaHidden = 'true';
  for (const { l, colour = 'var(--ink)' } of again) {
    const cut = standsOver(word, l) ? { below: m.crown(l) + 0.02 } : {};
    base.append(copy(word.text, { slot: m.slot(l), colour, ...cut }, m.edge));
  }
  const strokes: Stroke[] = [];
  for (const { l, look, under = 0 } of shapes) {
    const over = standsOver(word, l);
    if (over && !m.top && shapes.some((x) => x.l === l - 1)) continue;
    const { sign, colour, key } = look;
    const place = over && m.top ? { over: m.top(l) } : {};
    strokes.push({ slot: m.slot(l), sign, colour, under, key, ...place });
  }
  if (strokes.length) base.append(drawing(strokes, m.edge));
  for (const s of strokes) if (s.key) base.append(keyOf(s, s.key, m.edge));
  return base;
}

/** Where the browser colours no ranges, the whole word takes the colour of its first mark. */
export function whole(el: HTMLElement, spans: Span[]) {
  if (ranges) return;
  el.classList.toggle('whole', spans.length > 0);
  if (spans[0]) el.style.setProperty('--whole', spans[0].colour);
}

function stroke(d: string, sign: Sign, colour: string): SVGElement {
  const p = document.createElementNS(SVG, 'path');
  p.setAttribute('d', d);
  p.setAttribute('class', `sign ${sign}`);
  p.setAttribute('stroke-width', String(THICK[sign]));
  p.style.stroke = colour;
  return p;
}

/** The key of a pencil, to the left of a shape; no text of the page, like a copy of a word. */
function keyOf(s: Stroke, key: string, edge: number): HTMLElement {
  const { x, y } = placeOf(s, edge);
  const el = span('key');
  el.dataset.key = key;
  el.style.cssText = `color:${s.colour};left:${em(x / 100)};top:${em(y / 100)}`;
  return el;
}
