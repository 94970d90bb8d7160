// Which lines fit a child best, of every passage of the text. The same as
// generator/internal/plan/rank.go, in whole numbers, and held to it by shared vectors; the weights
// are explained in score.go.
import { all } from './candidates.ts';
import { Channel } from './counter.ts';
import { Order } from './order.ts';
import type { Phrases } from './phrases.ts';
import { BEST, div, ENOUGH, MAX, MAX_DUE, MIN, type Query, weights } from './score.ts';
import { most, search } from './search.ts';

/**
 * As wanted; fewer places than wanted; only where lines of the last days were; none in the verses
 * asked for.
 */
export const AsWanted = 0;
export const Fewer = 1;
export const Again = 2;
export const Nowhere = 3;

export interface Passage {
  a: number;
  b: number;
  words: number;
  letters: number;
  focus: number;
  known: number;
  later: number;
  byRule: [rule: number, places: number][];
  due: number[];
  share: number;
  distance: number;
  score: number;
}
export interface Ranking {
  seen: number;
  least: number;
  how: number;
  passages: Passage[];
  /** The best lies outside the juz in which the child reads, which has no lines as wanted. */
  beyond?: boolean;
}

export function rank(x: Phrases, query: Query): Ranking {
  const q = {
    min: MIN,
    max: MAX,
    want: ENOUGH,
    best: BEST,
    from: 0,
    to: x.of.length - 2,
    ...query,
    short: 0,
  };
  q.short = Math.min(query.short ?? q.min, q.min);
  const focus = new Channel(x, q.focus);
  const list = all(x, x.of[q.from]!, x.of[q.to + 1]! - 1, q.short, q.max);
  const before = usedBefore(x, q.used);
  const same = new Set(q.used.map(([a, b]) => a * x.n + b));
  const fresh = (a: number, b: number) => before[b + 1] === before[a];
  const again = (a: number, b: number) => !same.has(a * x.n + b);
  let least = 0;
  let how = AsWanted;
  if (q.focus.length) {
    const n = most(list, focus, q.want, fresh, again);
    if (n.fresh >= q.want) least = q.want;
    else if (n.fresh) [least, how] = [n.fresh, Fewer];
    else if (n.again) [least, how] = [Math.min(n.again, q.want), Again];
    else return { seen: list.n, least, how: Nowhere, passages: [] };
  }
  const order = new Order(x, q.place, q.back);
  const passages: Passage[] = [];
  const taken = new Uint8Array(x.n);
  search(
    list,
    focus,
    weights(x, q, order),
    least,
    how === Again ? again : fresh,
    (a, b, points) => {
      if (taken.subarray(a, b + 1).includes(1)) return true;
      taken.fill(1, a, b + 1);
      passages.push(figures(x, q, a, b, points, order));
      return passages.length < q.best;
    },
  );
  return { seen: list.n, least, how, passages };
}

/** How many phrases were used before each one, one entry more than phrases. */
function usedBefore(x: Phrases, used: [number, number][]): Int32Array {
  const is = new Uint8Array(x.n);
  const before = new Int32Array(x.n + 1);
  for (const [a, b] of used) is.fill(1, a, b + 1);
  for (let p = 0; p < x.n; p++) before[p + 1] = before[p]! + is[p]!;
  return before;
}

function figures(x: Phrases, q: Query, a: number, b: number, score: number, order: Order): Passage {
  const byRule: [number, number][] = [];
  let focus = 0;
  let known = 0;
  let later = 0;
  for (let r = 0; r < x.counts.length; r++) {
    const n = x.count(r, a, b);
    if (q.focus.includes(r)) focus += n;
    else if (q.known.includes(r)) known += n;
    else if (n) {
      later += n;
      byRule.push([r, n]);
    }
  }
  byRule.sort((p, o) => o[1] - p[1]);
  const all = focus + known + later;
  return {
    a,
    b,
    words: x.at[b + 1]! - x.at[a]!,
    letters: x.lettersAt[b + 1]! - x.lettersAt[a]!,
    focus,
    known,
    later,
    byRule,
    due: q.due.slice(0, MAX_DUE).filter((r) => x.count(r, a, b) > 0),
    share: all ? div(100 * (focus + known), all) : 0,
    distance: order.on(a),
    score,
  };
}

/**
 * Ranks; a rule with very few places gets other lengths of line around them, and at last the same
 * lines again.
 */
export function choose(x: Phrases, q: Query): Ranking {
  let r = rank(x, q);
  if (r.how !== Nowhere || !q.used.length) return r;
  const wide = { ...q, min: div(q.min ?? MIN, 2), max: div((q.max ?? MAX) * 3, 2) };
  r = rank(x, wide);
  if (r.how !== Nowhere) return r;
  r = rank(x, { ...wide, used: [] });
  return r.how === Nowhere ? r : { ...r, how: Again };
}
