// The steps of a session, forwards and back: find, check, read, done. The check has two stages: how
// many places are left, then which.
import { check, type Result } from '../marking/check.ts';
import { pencilOf, type Pencil, STOPS } from '../marking/pencils.ts';
import * as state from '../state.ts';
import { get, type Practice, setPhase, stops } from './core.ts';
import type { Draft, Mark, Phase } from '../types.ts';

/** What a pencil has marked, compared with its places. */
export interface Checked extends Result {
  pencil: Pencil;
}

/** Marks with the counts that were written once for all of them. */
export const countedMarks = ({ marks, lengths, lines }: Draft): Mark[] =>
  marks.map((m) => {
    const all = lengths?.[pencilOf(m, lines)];
    return all && !m.count ? { ...m, count: all } : m;
  });

/** The last comparison: several parts of a drawing ask for it. */
let last: { of: unknown[]; all: Checked[] } | undefined;

/** The marks of each pencil that marks letters, compared with its places. */
export function results(p: Practice): Checked[] {
  const { settings, catalogue } = state.get();
  const of = [p.draft, p.verses, p.pencils, settings, catalogue];
  if (!last || of.some((x, i) => x !== last!.of[i])) last = { of, all: compare(p) };
  return last.all;
}

function compare(p: Practice): Checked[] {
  const book = state.book();
  const marks = countedMarks(p.draft);
  const now = stops(p);
  return p.pencils
    .filter((x) => x.id !== STOPS)
    .map((pencil) => {
      const own = marks.filter((m) => pencilOf(m, p.draft.lines) === pencil.id);
      return { pencil, ...check(p.verses, pencil.rules, own, now, book) };
    });
}

/** Places found, without those that are heard and not written: nobody asks for these. */
export const found = (r: Result) => r.found.filter((f) => !f.e.unwritten);

/** How many places there are. */
export const placesIn = (r: Result) => found(r).length + r.missed.length;

/** Places found and places there are, of all pencils. */
export function total(all: Checked[]): { found: number; of: number } {
  const sum = (of: (r: Result) => number) => all.reduce((n, r) => n + of(r), 0);
  return { found: sum((r) => found(r).length), of: sum(placesIn) };
}

/** Places that each verse still hides, by its index; on paper, all that it has. */
export function hidden(p: Practice, all: Checked[]): Map<number, number> {
  const by = new Map<number, number>();
  const add = (v: number) => by.set(v, (by.get(v) ?? 0) + 1);
  for (const r of all) {
    for (const m of r.missed) add(m.v);
    if (p.draft.paper) for (const f of found(r)) add(f.v);
  }
  return new Map([...by].sort(([a], [b]) => a - b));
}

/** Whether the check still keeps to itself where the missed places are. */
export const keepsBack = ({ draft }: Practice) => draft.phase === 'check' && draft.told === 'some';

/** Goes on: from finding to the check, from there to reading, from reading to the end. */
export function advance() {
  const p = get();
  if (!p) return;
  const { phase } = p.draft;
  if (phase === 'find') checkMarks(p);
  else if (phase === 'check') setPhase('read');
  else if (phase === 'read') setPhase('done');
}

/** The first look says how many places are left; where none is, there is nothing to keep back. */
function checkMarks(p: Practice) {
  const all = results(p);
  const n = total(all);
  const clear = n.found === n.of && all.every((r) => !r.extra.length && !r.beside.length);
  const told = clear || p.draft.told === 'all' ? 'all' : 'some';
  setPhase('check', { told, looked: p.draft.looked ?? n.found });
}

/** Says where the missed places are, and why. */
export const showAll = () => setPhase('check', { told: 'all' });

/**
 * Back to marking with every mark as it is. After everything was shown, the record will say that
 * there was help.
 */
export function lookAgain() {
  const p = get();
  if (!p) return;
  const all = results(p);
  const n = total(all);
  const seen = p.draft.told === 'all' && n.found < n.of;
  const apart = all.flatMap((r) => [...r.beside, ...r.extra.map((x) => x.mark)]);
  setPhase('find', { paper: undefined, ...(seen && { helped: true }) }, { apart });
}

/** The lines were marked on paper: the screen asks how many places were found. */
export const onPaper = () => setPhase('check', { paper: {}, told: 'some' });

/** The step before. */
export function before(p: Practice): Phase | undefined {
  const marks = p.pencils.length > 0;
  const way: Phase[] = marks ? ['find', 'check', 'read', 'done'] : ['read', 'done'];
  return way[way.indexOf(p.draft.phase) - 1];
}
