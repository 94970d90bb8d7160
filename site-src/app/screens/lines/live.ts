// The lines in hand: what is shown, the marks so far, and every way they change. Kept as a draft after each change.
import * as state from '../../state.ts';
import * as store from '../../store/store.ts';
import { check, type Result } from '../../marking/check.ts';
import { Stops } from '../../text/stops.ts';
import type { Catalogue, Draft, Lines, Mark, Phase, Place, Rule, Verse } from '../../types.ts';

export interface Live {
  draft: Draft; verses: Verse[]; index: number; rule: Rule | undefined; history: Mark[][];
  caret: Place | undefined; explained: Place | undefined; open: { v: number; w: number } | undefined;
  answer: boolean; ask: boolean; drawer: boolean; say: string;
}

let live: Live | undefined, changed: () => void = () => undefined, timer = 0;

export const get = () => live;
export const onChange = (f: () => void) => { changed = f; };

export function begin(c: Catalogue, verses: Verse[], draft: Draft): Live {
  const index = c.rules.findIndex((r) => r.id === draft.lines.rule);
  return live = {
    draft, verses, index, rule: c.rules[index], history: [], caret: undefined, explained: undefined, open: undefined,
    answer: false, ask: false, drawer: false, say: '',
  };
}

export const fresh = (learner: string, lines: Lines): Draft => ({
  learner, lines, phase: lines.rule ? 'find' : 'read', marks: [], stops: [], helped: false, started: new Date().toISOString(),
});

export const leave = () => { flush(); live = undefined; };

function flush() {
  if (!timer || !live) return;
  clearTimeout(timer);
  timer = 0;
  // Someone without a learner yet may try everything; nothing is kept for them.
  if (live.draft.learner) store.saveDraft(live.draft).catch(() => state.set({ kept: false }));
}
addEventListener('pagehide', flush);
document.addEventListener('visibilitychange', () => { if (document.hidden) flush(); });

export function set(patch: Partial<Live>) {
  if (!live) return;
  const kept = patch.draft && patch.draft !== live.draft;
  live = { ...live, ...patch };
  if (kept) timer ||= window.setTimeout(flush, 400);
  changed();
}

const draft = (patch: Partial<Draft>, more: Partial<Live> = {}) => live && set({ draft: { ...live.draft, ...patch }, ...more });

export const stops = (l: Live) => new Stops(l.verses, l.draft.stops);

export const result = (l: Live): Result => (l.rule
  ? check(l.verses, l.index, l.rule, l.draft.marks, stops(l), state.get().settings, state.get().catalogue.details)
  : { found: [], missed: [], extra: [] });

const same = (a: Place, b: Place) => a.v === b.v && a.w === b.w && a.l === b.l;
export const marked = (l: Live, p: Place) => l.draft.marks.find((m) => same(m, p));

/** Marks a letter or takes its mark away; step false makes it part of the change before, as within one stroke. */
export function mark(p: Place, on: boolean, step = true) {
  if (!live || !!marked(live, p) === on) return;
  const marks = on ? [...live.draft.marks, { ...p, count: 0 }] : live.draft.marks.filter((m) => !same(m, p));
  draft({ marks }, { caret: p, history: step ? [...live.history, live.draft.marks] : live.history });
}

/** Writes the count at the letter, which is marked if it was not; the same count again takes it away. */
export function count(p: Place, n: number) {
  if (!live) return;
  const m = marked(live, p), to = m?.count === n ? 0 : n;
  const marks = [...live.draft.marks.filter((x) => x !== m), { ...p, count: to }];
  draft({ marks }, { caret: p, history: [...live.history, live.draft.marks] });
}

export function undo() {
  const marks = live?.history.at(-1);
  if (live && marks) draft({ marks }, { history: live.history.slice(0, -1) });
}

export function moveStop(v: number, w: number) {
  if (!live) return;
  const s = stops(live);
  s.set(v, w, !s.after(v, w));
  draft({ stops: s.moved() });
}

export const phase = (to: Phase) => draft({ phase: to }, { explained: undefined, ask: false, drawer: false, answer: false });

export function answer() {
  if (live) draft({ helped: true }, { answer: !live.answer });
}
