// How a stroke of a hand is bound to words, and when it is a line under words. In pixels, y
// downwards. Pure.
import type { WordAt } from '../types.ts';
import type { Dot } from './drawing.ts';

export interface Point {
  x: number;
  y: number;
}

/** Where a word stands: its edges, its baseline, and the size of its letters. */
export interface Spot extends WordAt {
  left: number;
  right: number;
  base: number;
  em: number;
}

/** From where to where below the baseline the foot of the words is, in em. */
const FOOT = [-0.1, 1];

/** How much a line under words may rise or fall, in em, and beside that as a part of its length. */
const RISE = [0.3, 0.05] as const;

/** How much longer than straight a line under words may be across. */
const BACK = 1.2;

/** The least length of a line under words, in em. */
const LEAST = 0.5;

/** How high a stroke is at most that belongs to one line of text, in em. */
const ONE_LINE = 2.6;

/** How much further than it was drawn a point may come to lie from the one before it, in em. */
const TEAR = 0.75;

/** The words of a line of text have nearly one baseline. */
const sameLine = (a: Spot, b: Spot) => Math.abs(a.base - b.base) < 0.5 * a.em;

function extent(points: Point[]) {
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  return { left, right, top, bottom, wide: right - left, high: bottom - top };
}

/** The word whose line of text is nearest to a height: its middle is a third of an em up. */
const nearestLine = (spots: Spot[], y: number) =>
  spots.reduce((a, b) =>
    Math.abs(b.base - 0.35 * b.em - y) < Math.abs(a.base - 0.35 * a.em - y) ? b : a,
  );

/** How far beside a word a point is. */
const beside = (s: Spot, x: number) => Math.max(s.left - x, 0, x - s.right);

/**
 * The words below which a stroke is a line: it runs nearly level along the foot of one line of text
 * without going back. They are those that have half of their width over it or more. None where it
 * is something else, or is under letters of a word alone.
 */
export function underlined(points: Point[], spots: Spot[]): WordAt[] {
  if (!spots.length) return [];
  const e = extent(points);
  const { em } = spots[0]!;
  const across = points.reduce((sum, p, i) => sum + (i ? Math.abs(p.x - points[i - 1]!.x) : 0), 0);
  if (e.wide < LEAST * em || e.high > RISE[0] * em + RISE[1] * e.wide || across > BACK * e.wide)
    return [];
  const y = points.reduce((sum, p) => sum + p.y, 0) / points.length;
  const foot = (s: Spot) => y > s.base + FOOT[0]! * em && y < s.base + FOOT[1]! * em;
  return spots
    .filter((s) => foot(s) && 2 * shared(s, e) >= s.right - s.left)
    .map(({ v, w }) => ({ v, w }));
}

const shared = (s: Spot, e: { left: number; right: number }) =>
  Math.min(s.right, e.right) - Math.max(s.left, e.left);

/**
 * Binds a stroke to words: one about a line of text to the words of that line, a higher one point by
 * point to the nearest lines; each point to the nearest of the words that the stroke is around, or of
 * all where it is around none.
 */
export function bind(points: Point[], spots: Spot[]): Dot[] {
  if (!spots.length) return [];
  const e = extent(points);
  const one = e.high <= ONE_LINE * spots[0]!.em && nearestLine(spots, (e.top + e.bottom) / 2);
  const candidates = new Map<Spot, Spot[]>();
  const wordsOf = (line: Spot) => {
    const all = spots.filter((s) => sameLine(s, line));
    const inside = all.filter((s) => within(e, (s.left + s.right) / 2));
    return inside.length ? inside : all;
  };
  return points.map((p, i) => {
    const line = one || nearestLine(spots, p.y);
    const words = candidates.get(line) ?? wordsOf(line);
    candidates.set(line, words);
    const s = words.reduce((a, b) => (beside(b, p.x) < beside(a, p.x) ? b : a));
    return dot(p, s, points[i - 1]);
  });
}

const within = (e: { left: number; right: number }, x: number) => x > e.left && x < e.right;

const dot = (p: Point, s: Spot, last: Point | undefined): Dot => ({
  v: s.v,
  w: s.w,
  x: (s.right - p.x) / (s.right - s.left),
  y: (p.y - s.base) / s.em,
  step: last ? Math.hypot(p.x - last.x, p.y - last.y) / s.em : 0,
});

/**
 * Where the points of a stroke are now, in runs: it tears where its words have come to stand on
 * other lines, and where some of them are not shown.
 */
export function runs(dots: Dot[], spot: (at: WordAt) => Spot | undefined): Point[][] {
  const out: Point[][] = [];
  let last: Point | undefined;
  for (const d of dots) {
    const s = spot(d);
    const p = s && { x: s.right - d.x * (s.right - s.left), y: s.base + d.y * s.em };
    const near = s && last && p && Math.hypot(p.x - last.x, p.y - last.y) <= (d.step + TEAR) * s.em;
    if (p && near) out.at(-1)!.push(p);
    else if (p) out.push([p]);
    last = p;
  }
  return out;
}

/** The straight pieces of a line under words, one for each line of text. */
export function pieces(
  words: WordAt[],
  spot: (at: WordAt) => Spot | undefined,
): { left: number; right: number; base: number; em: number }[] {
  const out: Spot[] = [];
  for (const at of words) {
    const s = spot(at);
    if (!s) continue;
    const last = out.at(-1);
    if (!last || !sameLine(last, s)) out.push({ ...s });
    else {
      last.left = Math.min(last.left, s.left);
      last.right = Math.max(last.right, s.right);
    }
  }
  return out;
}

/** How far a point is from a run of points, in pixels. */
export function distance(run: Point[], p: Point): number {
  let least = Infinity;
  run.forEach((b, i) => {
    const a = run[i - 1] ?? b;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const along = dx || dy ? ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy) : 0;
    const k = Math.min(Math.max(along, 0), 1);
    least = Math.min(least, Math.hypot(a.x + k * dx - p.x, a.y + k * dy - p.y));
  });
  return least;
}

const round = (n: number) => Math.round(n * 10) / 10;

/** A run as the path of a stroke; a single point is a dot. */
export const pathOf = (run: Point[]): string =>
  run.map((p, i) => `${i ? 'L' : 'M'}${round(p.x)} ${round(p.y)}`).join('') +
  (run.length === 1 ? 'h0' : '');
