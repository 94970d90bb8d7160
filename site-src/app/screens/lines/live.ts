// The lines in hand: what is shown, the marks so far, and every way they change. Kept as a draft
// after each change.
import * as state from '../../state.ts';
import { linesHash } from '../../share/link.ts';
import { newId } from '../../store/id.ts';
import * as store from '../../store/store.ts';
import { check, type Result } from '../../marking/check.ts';
import { Stops } from '../../text/stops.ts';
import type { Catalogue, Draft, Lines, Mark, Phase, Place, Rule, Verse } from '../../types.ts';

export interface Live {
  draft: Draft;
  verses: Verse[];
  index: number;
  rule: Rule | undefined;
  history: Mark[][];
  caret: Place | undefined;
  explained: Place | undefined;
  open: { v: number; w: number } | undefined;
  answer: boolean;
  ask: boolean;
  drawer: boolean;
  say: string;
}

let live: Live | undefined,
  changed: () => void = () => undefined,
  timer = 0,
  writing = 0,
  late = false,
  over = '';

export const get = () => live;
export const onChange = (f: () => void) => {
  changed = f;
};

export function begin(c: Catalogue, verses: Verse[], draft: Draft): Live {
  const index = c.rules.findIndex((r) => r.id === draft.lines.rule);
  over = '';
  return (live = {
    draft,
    verses,
    index,
    rule: c.rules[index],
    history: [],
    caret: undefined,
    explained: undefined,
    open: undefined,
    answer: false,
    ask: false,
    drawer: false,
    say: '',
  });
}

export function fresh(learner: string, lines: Lines): Draft {
  const now = new Date().toISOString();
  return {
    id: newId(),
    learner,
    at: linesHash(lines),
    lines,
    phase: lines.rule ? 'find' : 'read',
    marks: [],
    stops: [],
    helped: false,
    started: now,
    updated: now,
  };
}

/** A draft as it fits the lines: what was kept of another text is left out. */
export function fitted(d: Draft, verses: Verse[]): Draft {
  const word = (v: number, w: number) => verses[v]?.words[w];
  return {
    ...d,
    marks: d.marks.filter((m) => word(m.v, m.w)?.letters[m.l]),
    stops: d.stops.filter(([v, w]) => word(v, w)),
  };
}

export const leave = () => {
  flush();
  live = undefined;
};

/**
 * Quiet (ms) after which a draft is written once more, so that a loss of power does not undo it
 * either. Not sooner: a mark that is made meanwhile would have to wait for it.
 */
const QUIET = 2000;

/**
 * Writes on their way at a time: more would only queue before the one that matters, as in a long
 * stroke.
 */
const MOST = 3;

/** Keeps the draft at once, or as soon as one of those being written is. */
function save() {
  if (writing >= MOST) late = true;
  else write();
  clearTimeout(timer);
  timer = window.setTimeout(flush, QUIET);
}

function write(safe = false) {
  late = false;
  // Someone without a learner yet may try everything; nothing is kept for them.
  if (!live?.draft.learner || live.draft.id === over) return;
  const { id, learner } = live.draft,
    { sessions, learners } = state.get();
  // What another tab has kept or removed meanwhile does not come back.
  if (sessions.some((s) => s.id === id) || !learners.some((x) => x.id === learner)) return;
  writing++;
  (safe ? store.saveDraft : store.updateDraft)(live.draft)
    .catch(() => state.set({ kept: false }))
    .finally(() => {
      writing--;
      if (late) write();
    });
}

/** Writes what is not written yet, before the page may go. */
function flush() {
  if (!timer) return;
  clearTimeout(timer);
  timer = 0;
  write(true);
}
addEventListener('pagehide', flush);
document.addEventListener('visibilitychange', () => {
  if (document.hidden) flush();
});

/**
 * Says that a session is being kept, so that its draft does not come back; with '' that it was not.
 */
export const closing = (id: string) => {
  over = id;
};

/** Takes over what another tab has made of the same lines. */
export async function adopt() {
  const was = live?.draft,
    now = was && (await store.draft(was.learner, was.at).catch(() => undefined));
  if (!live || !now || live.draft !== was || writing || JSON.stringify(now) === JSON.stringify(was))
    return;
  live = { ...live, draft: fitted(now, live.verses), history: [] };
  changed();
}

export function set(patch: Partial<Live>) {
  if (!live) return;
  const changes = patch.draft && patch.draft !== live.draft;
  live = { ...live, ...patch };
  if (changes) save();
  changed();
}

const draft = (patch: Partial<Draft>, more: Partial<Live> = {}) =>
  live && set({ draft: { ...live.draft, ...patch, updated: new Date().toISOString() }, ...more });

export const stops = (l: Live) => new Stops(l.verses, l.draft.stops);

export const result = (l: Live): Result =>
  l.rule
    ? check(
        l.verses,
        l.index,
        l.rule,
        l.draft.marks,
        stops(l),
        state.get().settings,
        state.get().catalogue.details,
      )
    : { found: [], missed: [], extra: [] };

const same = (a: Place, b: Place) => a.v === b.v && a.w === b.w && a.l === b.l;
export const marked = (l: Live, p: Place) => l.draft.marks.find((m) => same(m, p));

/**
 * Marks a letter or takes its mark away; step false makes it part of the change before, as within
 * one stroke.
 */
export function mark(p: Place, on: boolean, step = true) {
  if (!live || !!marked(live, p) === on) return;
  const marks = on
    ? [...live.draft.marks, { ...p, count: 0 }]
    : live.draft.marks.filter((m) => !same(m, p));
  draft(
    { marks },
    { caret: p, history: step ? [...live.history, live.draft.marks] : live.history },
  );
}

/**
 * Writes the count at the letter, which is marked if it was not; the same count again takes it
 * away.
 */
export function count(p: Place, n: number) {
  if (!live) return;
  const m = marked(live, p),
    to = m?.count === n ? 0 : n;
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

/** The lines from their beginning, as a session of their own. */
export function restart(to?: Draft) {
  if (live)
    set({
      draft: to ?? fresh(live.draft.learner, live.draft.lines),
      history: [],
      caret: undefined,
      explained: undefined,
      ask: false,
      drawer: false,
      answer: false,
    });
}

/** The learner whose lines these are: another may have been taken in hand since. */
export const learner = (l: Live) => state.get().learners.find((x) => x.id === l.draft.learner);

export function phase(to: Phase) {
  draft({ phase: to }, { explained: undefined, ask: false, drawer: false, answer: false });
  flush();
}

export function answer() {
  if (live) draft({ helped: true }, { answer: !live.answer });
}
