// The lines that are read and marked, and every way they change. Each change is kept as a draft.
import { check, type Result } from '../marking/check.ts';
import * as state from '../state.ts';
import { Stops } from '../text/stops.ts';
import type { Catalogue, Draft, Mark, Phase, Place, Rule, Verse } from '../types.ts';
import { fresh } from './draft.ts';
import { closing, flush, save } from './keeping.ts';

export interface Practice {
  draft: Draft;
  verses: Verse[];
  /** What is read before a surah's first verse; empty where nothing is. */
  basmala: string;
  /** The rule to mark, and its number in the catalogue; none where the lines are only read. */
  rule: Rule | undefined;
  index: number;
  /** The marks before each change, for Undo. */
  history: Mark[][];
  /** The letter of the keyboard, or the one marked last. */
  caret: Place | undefined;
  /** The letter whose reading is explained. */
  explained: Place | undefined;
  /** The word that is open large. */
  open: { v: number; w: number } | undefined;
  /** Whether the answer is shown while the child still looks. */
  answer: boolean;
  /** Whether a tap explains a letter in place of marking it. */
  ask: boolean;
  /** Whether the adult's help is open. */
  drawer: boolean;
  /** Whether only the letters are drawn as yet. */
  opening: boolean;
  /** What a screen reader is to say. */
  say: string;
}

export const get = () => state.get().practice;

/** Lines that are opened. */
export function begin(c: Catalogue, verses: Verse[], basmala: string, draft: Draft) {
  closing('');
  const index = c.rules.findIndex((r) => r.id === draft.lines.rule);
  const practice: Practice = {
    draft,
    verses,
    basmala,
    rule: c.rules[index],
    index,
    history: [],
    open: undefined,
    opening: true,
    say: '',
    ...CLOSED,
  };
  state.set({ practice });
}

/** Nothing is open around the lines, as when a step begins. */
const CLOSED = {
  caret: undefined,
  explained: undefined,
  ask: false,
  drawer: false,
  answer: false,
} as const;

/** The lines are left for another screen. */
export function leave() {
  flush();
  state.set({ practice: undefined });
}

/** Changes something; a changed draft is kept. */
export function set(patch: Partial<Practice>) {
  const was = get();
  if (!was) return;
  const practice = { ...was, opening: false, ...patch };
  state.set({ practice });
  if (practice.draft !== was.draft) save();
}

function change(patch: Partial<Draft>, more: Partial<Practice> = {}) {
  const p = get();
  if (p) set({ draft: { ...p.draft, ...patch, updated: new Date().toISOString() }, ...more });
}

export const stops = (p: Practice) => new Stops(p.verses, p.draft.stops);

export const result = (p: Practice): Result =>
  p.rule
    ? check(
        p.verses,
        p.index,
        p.rule,
        p.draft.marks,
        stops(p),
        state.get().settings,
        state.get().catalogue.details,
      )
    : { found: [], missed: [], extra: [] };

const same = (a: Place, b: Place) => a.v === b.v && a.w === b.w && a.l === b.l;

export const marked = (p: Practice, at: Place) => p.draft.marks.find((m) => same(m, at));

/**
 * Marks a letter or takes its mark away; step false makes it part of the change before, as within
 * one stroke.
 */
export function mark(at: Place, on: boolean, step = true) {
  const p = get();
  if (!p || !!marked(p, at) === on) return;
  const { marks } = p.draft;
  change(
    { marks: on ? [...marks, { ...at, count: 0 }] : marks.filter((m) => !same(m, at)) },
    { caret: at, history: step ? [...p.history, marks] : p.history },
  );
}

/**
 * Writes the count at the letter, which is marked if it was not; the same count again takes it
 * away.
 */
export function count(at: Place, n: number) {
  const p = get();
  if (!p) return;
  const m = marked(p, at);
  const others = p.draft.marks.filter((x) => x !== m);
  change(
    { marks: [...others, { ...at, count: m?.count === n ? 0 : n }] },
    { caret: at, history: [...p.history, p.draft.marks] },
  );
}

export function undo() {
  const p = get();
  const marks = p?.history.at(-1);
  if (p && marks) change({ marks }, { history: p.history.slice(0, -1) });
}

/** Makes a place a stop, or one that is read on. */
export function moveStop(v: number, w: number) {
  const p = get();
  if (!p) return;
  const s = stops(p);
  s.set(v, w, !s.after(v, w));
  change({ stops: s.moved() });
}

/** The lines from their beginning, as a session of their own; or as a draft had them. */
export function restart(to?: Draft) {
  const p = get();
  if (p) set({ draft: to ?? fresh(p.draft.learner, p.draft.lines), history: [], ...CLOSED });
}

/** The learner whose lines these are: another may have been chosen since. */
export const learner = (p: Practice) => state.get().learners.find((x) => x.id === p.draft.learner);

export function setPhase(phase: Phase) {
  change({ phase }, { ...CLOSED, caret: get()?.caret });
  flush();
}

const NEXT = { find: 'check', check: 'read', read: 'done', done: 'done' } as const;

/** Goes on: find, check, read, done. */
export function advance() {
  const p = get();
  if (p && p.draft.phase !== 'done') setPhase(NEXT[p.draft.phase]);
}

/** Shows the answer, or hides it; the record will say that there was help. */
export function showAnswer() {
  const p = get();
  if (p) change({ helped: true }, { answer: !p.answer });
}

/** What choosing a letter does: marks it while finding, else tells how it is read. */
export function choose(at: Place) {
  const p = get();
  if (!p) return;
  if (p.draft.phase === 'find' && !p.ask) mark(at, !marked(p, at));
  else set({ explained: at, caret: at });
}
