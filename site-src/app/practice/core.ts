// The lines that are read and marked. Each change of them is kept as a draft.
import { pencilIds, type Pencil, pencils, STOPS } from '../marking/pencils.ts';
import * as state from '../state.ts';
import { type Patch, patched } from '../store/patch.ts';
import { Stops } from '../text/stops.ts';
import type { Catalogue, Draft, Mark, Outcome, Phase, Place, Verse } from '../types.ts';
import { fresh } from './draft.ts';
import { closing, flush, save } from './keeping.ts';

/** What Undo brings back. */
type Before = Pick<Draft, 'marks' | 'stops' | 'lengths'>;

export interface Practice {
  draft: Draft;
  verses: Verse[];
  /** What is read before a surah's first verse; empty where nothing is. */
  basmala: string;
  /** What there is to mark with; none where the lines are only read. */
  pencils: Pencil[];
  /** The id of the pencil in hand; '' for none. */
  hand: string;
  /** What there was before each change, for Undo. */
  history: Before[];
  /** The letter of the keyboard, or the one marked last. */
  caret: Place | undefined;
  /** The letter whose reading is explained. */
  explained: Place | undefined;
  /**
   * The word that is open large; once: until a letter is chosen, why: saying why a tap opened it.
   */
  open: { v: number; w: number; once?: boolean; why?: boolean } | undefined;
  /** The letters that a stroke has passed and will mark, or will take the marks of. */
  stroke: { letters: Place[]; on: boolean } | undefined;
  /** Whether the answer is shown while the child still looks. */
  answer: boolean;
  /** Whether a tap explains a letter in place of marking it. */
  ask: boolean;
  /** Whether the adult's help is open. */
  drawer: boolean;
  /** Whether other pencils can be chosen. */
  case: boolean;
  /** Marks that the check has set apart: on letters that are no places. */
  apart: Mark[];
  /** Whether only the letters are drawn as yet. */
  opening: boolean;
  /** Whether another tab has the lines in hand: then they are only shown here. */
  elsewhere: boolean;
  /** How each of several learners read, by id, as far as it was said; away: did not read. */
  answers: Readonly<Record<string, Outcome | 'away'>>;
  /** What a screen reader is to say. */
  say: string;
}

export const get = () => state.get().practice;

/** The rules a learner has been taught; all of them where there is no learner. */
const taught = (learner: string) =>
  learner ? new Set(state.taughtOf(learner).map((x) => x.rule)) : 'all';

/** The pencils of a draft's lines. */
const pencilsOf = (c: Catalogue, d: Draft) => pencils(c, pencilIds(d.lines), taught(d.learner));

/** The rules that the pencils mark. */
export const marksRules = (p: Practice) => p.pencils.flatMap((x) => x.rules);

/** Lines that are opened. */
export function begin(practice: Practice) {
  closing('');
  state.set({ practice });
}

/** Lines as they are when they are opened. */
export function opened(read: Pick<Practice, 'verses' | 'basmala' | 'draft'>): Practice {
  const all = pencilsOf(state.get().catalogue, read.draft);
  return {
    ...read,
    pencils: all,
    hand: all[0]?.id ?? '',
    history: [],
    open: undefined,
    apart: [],
    opening: true,
    elsewhere: false,
    answers: {},
    say: '',
    ...CLOSED,
  };
}

/** Nothing is open around the lines, as when a step begins. */
const CLOSED = {
  caret: undefined,
  explained: undefined,
  stroke: undefined,
  ask: false,
  drawer: false,
  case: false,
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

/** Changes fields of the draft; undefined takes one away. Nothing where another tab has the lines. */
export function change(patch: Patch<Draft>, more: Partial<Practice> = {}) {
  const p = get();
  const updated = new Date().toISOString();
  if (p && !p.elsewhere) set({ draft: patched(p.draft, { ...patch, updated }), ...more });
}

/** The history with the present as what Undo brings back next. */
export const remembered = ({ history, draft }: Practice): Before[] => {
  const { marks, stops, lengths } = draft;
  return [...history, { marks, stops, ...(lengths && { lengths }) }];
};

export const stops = (p: Practice) => new Stops(p.verses, p.draft.stops);

/** The pencil in hand. */
export const inHand = (p: Practice) => p.pencils.find((x) => x.id === p.hand);

/** Whether the pencil in hand marks letters. */
export const marksLetters = (p: Practice) => !!p.hand && p.hand !== STOPS;

/** Whether a tap on a letter marks it. */
export const finding = (p: Practice) =>
  p.draft.phase === 'find' && !p.ask && !p.elsewhere && marksLetters(p);

/** Whether a press on a place to stop moves the stop. */
export const stopsMove = (p: Practice) => p.draft.phase !== 'find' || p.hand === STOPS;

export function undo() {
  const p = get();
  const before = p?.history.at(-1);
  if (!p || !before) return;
  change({ lengths: undefined, ...before }, { history: p.history.slice(0, -1) });
}

/** Makes a place a stop, or one that is read on. */
export function moveStop(v: number, w: number) {
  const p = get();
  if (!p || !stopsMove(p)) return;
  const s = stops(p);
  s.set(v, w, !s.after(v, w));
  change({ stops: s.moved() }, { history: remembered(p) });
}

/** The lines from their beginning, as a session of their own; or as a draft had them. */
export function restart(to?: Draft) {
  const p = get();
  if (!p) return;
  const draft = to ?? fresh(p.draft.learner, p.draft.lines);
  set({ draft, history: [], apart: [], ...CLOSED });
}

/**
 * Puts other pencils into the case beside that of the lines' rule. Marks of one that is taken out
 * are kept and not shown. Lines that were only read are marked from now on.
 */
export function choosePencils(also: string[]) {
  const p = get();
  if (!p) return;
  const { rule, from, to } = p.draft.lines;
  const lines = { rule, ...(also.length && { also }), from, to };
  const draft = { ...p.draft, lines };
  const all = pencilsOf(state.get().catalogue, draft);
  const added = all.find((x) => !p.pencils.some((y) => y.id === x.id));
  const left = all.some((x) => x.id === p.hand) ? p.hand : (all[0]?.id ?? '');
  const phase = !all.length ? 'read' : p.pencils.length ? p.draft.phase : 'find';
  change({ lines, phase }, { pencils: all, hand: added?.id ?? left });
  state.set({ route: { name: 'lines', lines } });
}

/** The learner whose lines these are: another may have been chosen since. */
export const learner = (p: Practice) => state.get().learners.find((x) => x.id === p.draft.learner);

/** Goes to a step, on or back; everything that was marked stays. */
export function setPhase(phase: Phase, patch: Patch<Draft> = {}, more: Partial<Practice> = {}) {
  change({ ...patch, phase }, { ...CLOSED, caret: get()?.caret, ...more });
  flush();
}

/** Shows the answer, or hides it; the record will say that there was help. */
export function showAnswer() {
  const p = get();
  if (p) change({ helped: true }, { answer: !p.answer });
}
