// Finds the best passages without weighing each: a stretch of the text, and then a start within it,
// is looked into only when the most it promises is no less than the best that is left (branch and
// bound, best first). The result is that of weighing every passage and sorting, which
// generator/internal/plan/rank.go does and the shared vectors hold it to.
import { type All, endOf, startOf } from './candidates.ts';
import type { Channel } from './counter.ts';
import { Heap } from './heap.ts';

/** Starts in a stretch. */
const STRETCH = 64;

export interface Weights {
  /**
   * No passage that begins in the phrases from a to b, both included, and has f places of the focus
   * or fewer earns more.
   */
  most(a: number, b: number, f: number): number;
  exact(a: number, b: number, f: number): number;
}

/**
 * The most places of the focus in a passage that begins with one of the starts from s to t, both
 * included.
 */
const reach = (l: All, focus: Channel, s: number, t: number) =>
  focus.most(l.starts[s]!, l.ends[t]!);

/**
 * Calls f with the first and last start of every stretch that may have more than least() places.
 */
function stretches(
  l: All,
  focus: Channel,
  least: () => number,
  f: (s: number, t: number) => void,
): void {
  for (let s = 0; s < l.starts.length; s += STRETCH) {
    const t = Math.min(s + STRETCH, l.starts.length) - 1;
    if (reach(l, focus, s, t) > least()) f(s, t);
  }
}

/**
 * The most places of the focus in a passage that is fresh, and in one that may be read again. want
 * of the first are enough.
 */
export function most(
  l: All,
  focus: Channel,
  want: number,
  fresh: (a: number, b: number) => boolean,
  again: (a: number, b: number) => boolean,
) {
  const out = { fresh: 0, again: 0 };
  const least = () => (out.fresh >= want ? Infinity : Math.min(out.fresh, out.again));
  stretches(l, focus, least, (first, last) => {
    for (let s = first; s <= last; s++) {
      const a = l.starts[s]!;
      for (let i = l.from[s]!; i < l.from[s + 1]! && out.fresh < want; i++) {
        const b = endOf(l, s, i);
        const n = focus.places(a, b);
        if (n > out.fresh && fresh(a, b)) out.fresh = n;
        if (n > out.again && again(a, b)) out.again = n;
      }
    }
  });
  return out;
}

// What waits in the heap is one number: the points, made positive; then a stretch, a start or a
// passage, in this order when the points are equal; then its number, of passages the first one
// highest.
const NUMBERS = 1 << 22;
const KINDS = 4;
const OFFSET = 1 << 20;
const StretchKind = 2;
const StartKind = 1;
const PassageKind = 0;
const pack = (points: number, kind: number, n: number) =>
  ((points + OFFSET) * KINDS + kind) * NUMBERS + (kind === PassageKind ? NUMBERS - 1 - n : n);

/**
 * Calls take with the passages that have at least so many places and may be taken, the best first,
 * until it says no.
 */
export function search(
  l: All,
  focus: Channel,
  w: Weights,
  least: number,
  may: (a: number, b: number) => boolean,
  take: (a: number, b: number, points: number) => boolean,
): void {
  const heap = new Heap();
  const promise = (kind: number, n: number, s: number, t: number) => {
    const f = reach(l, focus, s, t);
    if (f >= least) heap.push(pack(w.most(l.starts[s]!, l.starts[t]!, f), kind, n));
  };
  stretches(
    l,
    focus,
    () => least - 1,
    (s, t) => promise(StretchKind, s, s, t),
  );
  while (heap.size) {
    const top = heap.pop();
    const rest = Math.floor(top / NUMBERS);
    const kind = rest % KINDS;
    const n = top % NUMBERS;
    if (kind === StretchKind) {
      for (let s = n; s < Math.min(n + STRETCH, l.starts.length); s++) promise(StartKind, s, s, s);
    } else if (kind === StartKind) {
      const a = l.starts[n]!;
      for (let i = l.from[n]!; i < l.from[n + 1]!; i++) {
        const b = endOf(l, n, i);
        const f = focus.places(a, b);
        if (f >= least && may(a, b)) heap.push(pack(w.exact(a, b, f), PassageKind, i));
      }
    } else {
      const i = NUMBERS - 1 - n;
      const s = startOf(l, i);
      if (!take(l.starts[s]!, endOf(l, s, i), (rest - kind) / KINDS - OFFSET)) return;
    }
  }
}
