// Which lines fit a child best: every passage of the text is weighed. The same as generator/internal/plan/rank.go, in
// whole numbers, and held to it by shared vectors; the weights are explained there.
import { all } from './candidates.ts';
import { Channel } from './counter.ts';
import type { Phrases } from './phrases.ts';
import { BEST, div, ENOUGH, MAX, MAX_DUE, MIN, type Query, scorer } from './score.ts';

/** As wanted; fewer places than wanted; only where lines of the last days were; none in the verses asked for. */
export const AsWanted = 0, Fewer = 1, Again = 2, Nowhere = 3;

export interface Passage {
  a: number; b: number; words: number; letters: number; focus: number; known: number; later: number;
  byRule: [rule: number, places: number][]; due: number[]; share: number; distance: number; score: number;
}
export interface Ranking { seen: number; least: number; how: number; passages: Passage[] }

export function rank(x: Phrases, query: Query): Ranking {
  const q = { min: MIN, max: MAX, want: ENOUGH, best: BEST, from: 0, to: x.of.length - 2, ...query };
  const focus = new Channel(x, q.focus), used = usedSums(x, q.used), same = new Set(q.used.map(([a, b]) => a * 65536 + b));
  const { n, as, bs } = all(x, x.of[q.from]!, x.of[q.to + 1]! - 1, q.min, q.max), places = new Uint16Array(n);
  const fresh = (i: number) => used[bs[i]! + 1] === used[as[i]!], repeats = (i: number) => same.has(as[i]! * 65536 + bs[i]!);
  let most = 0, mostFresh = 0, least = 0, how = AsWanted;
  for (let i = 0; i < n; i++) {
    const f = places[i] = focus.places(as[i]!, bs[i]!);
    if (f > mostFresh && fresh(i)) mostFresh = f;
    if (f > most && !repeats(i)) most = f;
  }
  if (q.focus.length) {
    if (mostFresh >= q.want) least = q.want;
    else if (mostFresh) [least, how] = [mostFresh, Fewer];
    else if (most) [least, how] = [Math.min(most, q.want), Again];
    else return { seen: n, least, how: Nowhere, passages: [] };
  }
  // Only what can be chosen is weighed whole.
  const left: number[] = [], scores: number[] = [], place = x.at[x.of[q.place]!]!, score = scorer(x, q, place);
  for (let i = 0; i < n; i++) {
    if (places[i]! < least || (how === Again ? repeats(i) : !fresh(i))) continue;
    left.push(i);
    scores.push(score(as[i]!, bs[i]!, places[i]!));
  }
  const passages: Passage[] = [], taken = new Uint8Array(x.n);
  // The best is looked for once for each passage asked for: cheaper than sorting them all.
  while (passages.length < q.best) {
    let top = -1;
    for (let k = 0; k < left.length; k++) {
      if ((top < 0 || scores[k]! > scores[top]!) && !overlaps(taken, as[left[k]!]!, bs[left[k]!]!)) top = k;
    }
    if (top < 0) break;
    const a = as[left[top]!]!, b = bs[left[top]!]!;
    taken.fill(1, a, b + 1);
    passages.push(figures(x, q, a, b, scores[top]!, place));
  }
  return { seen: n, least, how, passages };
}

function overlaps(taken: Uint8Array, a: number, b: number): boolean {
  for (let p = a; p <= b; p++) if (taken[p]) return true;
  return false;
}

/** How many phrases before each one were used. */
function usedSums(x: Phrases, used: [number, number][]): Int32Array {
  const sums = new Int32Array(x.n + 1);
  for (const [a, b] of used) sums.fill(1, a + 1, b + 2);
  for (let p = 0; p < x.n; p++) sums[p + 1]! += sums[p]!;
  return sums;
}

function figures(x: Phrases, q: Query, a: number, b: number, score: number, place: number): Passage {
  const byRule: [number, number][] = [];
  let focus = 0, known = 0, later = 0;
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
    a, b, words: x.at[b + 1]! - x.at[a]!, letters: x.lettersAt[b + 1]! - x.lettersAt[a]!, focus, known, later, byRule,
    due: q.due.slice(0, MAX_DUE).filter((r) => x.count(r, a, b) > 0), share: all ? div(100 * (focus + known), all) : 0,
    distance: x.at[a]! - place, score,
  };
}

/** Ranks; a rule with very few places gets other lengths of line around them, and at last the same lines again. */
export function choose(x: Phrases, q: Query): Ranking {
  let r = rank(x, q);
  if (r.how !== Nowhere || !q.used.length) return r;
  const wide = { ...q, min: div(q.min ?? MIN, 2), max: div((q.max ?? MAX) * 3, 2) };
  r = rank(x, wide);
  if (r.how !== Nowhere) return r;
  r = rank(x, { ...wide, used: [] });
  return r.how === Nowhere ? r : { ...r, how: Again };
}
