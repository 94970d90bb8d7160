// Marks and counts on the lines, made with the pencil in hand.
import { lengthsOf, pencilOf } from '../marking/pencils.ts';
import * as state from '../state.ts';
import { type Mark, type Place, samePlace } from '../types.ts';
import { change, get, inHand, marksLetters, type Practice, remembered, set } from './core.ts';

/** The mark at a letter made with a pencil, that in hand if none is named. */
export const marked = (p: Practice, at: Place, pencil = p.hand) =>
  p.draft.marks.find((m) => samePlace(m, at) && pencilOf(m, p.draft.lines) === pencil);

/** A mark made with the pencil in hand. */
const markOf = (p: Practice, { v, w, l }: Place, count: number): Mark =>
  p.hand === p.draft.lines.rule ? { v, w, l, count } : { v, w, l, count, pencil: p.hand };

/** Marks letters with the pencil in hand, or takes its marks away, as one step. */
export function markAll(places: Place[], on: boolean) {
  const p = get();
  const last = places.at(-1);
  if (!p || !last || !marksLetters(p)) return;
  const todo = places.filter((at) => !!marked(p, at) !== on);
  if (!todo.length) return;
  const gone = new Set(todo.map((at) => marked(p, at)));
  const marks = on
    ? [...p.draft.marks, ...todo.map((at) => markOf(p, at, 0))]
    : p.draft.marks.filter((m) => !gone.has(m));
  change({ marks }, { caret: last, history: remembered(p) });
}

export const mark = (at: Place, on: boolean) => markAll([at], on);

/**
 * How counts are written with the pencil in hand: once for all its marks, at each letter, or not at
 * all; and which can be written.
 */
export function counting(p: Practice): { how: 'none' | 'all' | 'each'; lengths: number[] } {
  const { settings, catalogue } = state.get();
  const pencil = inHand(p);
  const when = settings.counting ?? 'once';
  const lengths = pencil && when !== 'never' ? lengthsOf(catalogue.rules, pencil, settings) : [];
  const how = !lengths.length ? 'none' : lengths.length === 1 && when === 'once' ? 'all' : 'each';
  return { how, lengths };
}

/**
 * Writes the count at the letter, which is marked if it was not; the same count again takes it
 * away.
 */
export function count(at: Place, n: number) {
  const p = get();
  if (!p || !marksLetters(p)) return;
  const m = marked(p, at);
  const others = p.draft.marks.filter((x) => x !== m);
  change(
    { marks: [...others, markOf(p, at, m?.count === n ? 0 : n)] },
    { caret: at, history: remembered(p) },
  );
}

/** Writes the count of all marks of the pencil in hand; the same count again takes it away. */
export function countAll(n: number) {
  const p = get();
  if (!p) return;
  const { [p.hand]: was, ...others } = p.draft.lengths ?? {};
  const lengths = was === n ? others : { ...others, [p.hand]: n };
  change({ lengths }, { history: remembered(p) });
}

/**
 * What choosing a letter does: marks it while finding, else tells how it is read. Where counts are
 * written at the letters, a marked one is chosen first, and loses its mark the next time.
 */
export function choose(at: Place) {
  const p = get();
  if (!p) return;
  if (p.draft.phase !== 'find' || p.ask) return set({ explained: at, caret: at });
  const chosen = !!p.caret && samePlace(p.caret, at);
  if (counting(p).how === 'each' && marked(p, at) && !chosen) set({ caret: at });
  else mark(at, !marked(p, at));
}
