// Keeps a session and what follows from it, with a way back. It comes with the lines, so that
// keeping needs no network.
import * as state from '../state.ts';
import * as store from '../store/store.ts';
import { t } from '../i18n.ts';
import { countsOf, type Outcomes, togetherOf } from '../record/entry.ts';
import { linesHash, sendHash } from '../share/link.ts';
import type { Draft, Outcome } from '../types.ts';
import { keep } from './keep.ts';
import { choose } from './learner.ts';
import { asksQuietly, secure } from './safe.ts';
import { follows, marked, unmarked } from './session.ts';
import { offerUndo } from './undo.ts';

const keeping = new Set<string>(); // drafts whose sessions are being kept

/** Keeps the session once, however often it is asked for; false if the device did not keep it. */
export const finish = (d: Draft, all: Outcomes[], outcome: Outcome): Promise<boolean> =>
  once(d, () => {
    const session = { id: d.id, ...marked(d, d.learner, outcome), ...countsOf(d, all) };
    return [{ session, ...follows(session) }];
  });

/**
 * The same for lines that several learners read together: a session for each of those who read,
 * with how it went.
 */
export const finishTogether = (
  d: Draft,
  all: Outcomes[],
  read: [learner: string, outcome: Outcome][],
): Promise<boolean> =>
  once(d, () =>
    read.map(([learner, outcome]) => {
      // As with one learner, the same draft makes the same sessions in every tab.
      const id = learner === d.learner ? d.id : `${d.id}-${learner}`.slice(0, 64);
      const session = { id, ...unmarked(d, learner, outcome), ...togetherOf(d, all) };
      return { session, ...follows(session) };
    }),
  );

async function once(d: Draft, made: () => store.Finished[]): Promise<boolean> {
  if (keeping.has(d.id)) return true;
  keeping.add(d.id);
  calm();
  return save(d, made()).finally(() => keeping.delete(d.id));
}

/** The second click of a double click must not hit what comes after the first. */
function calm() {
  const second = (e: MouseEvent) => {
    if (e.detail > 1) {
      e.preventDefault();
      e.stopPropagation();
    }
  };
  addEventListener('click', second, true);
  setTimeout(() => removeEventListener('click', second, true), 700);
}

async function save(d: Draft, all: store.Finished[]): Promise<boolean> {
  if (!(await keep(() => store.saveSessions(d, all)))) return false;
  location.hash = `#/${state.get().home}`;
  const n = state.get().sessions.filter((s) => all.some((x) => x.session.id === s.id)).length;
  if (n) tell(d, all, n);
  else state.set({ notice: { text: t('end.gone'), hold: true } });
  return true;
}

/** Says that so many sessions are kept; the result of one alone can be sent. */
function tell(d: Draft, all: store.Finished[], n: number) {
  const text = d.together?.length ? t('end.saved-each', { n }) : saved();
  const more = { label: t('nav.send'), run: () => send(d.id) };
  const alone = n === 1 && !d.together?.length;
  offerUndo(text, () => back(d, all), alone ? { more } : {});
  void secure();
}

/** Goes on to send the result of a session. */
function send(id: string) {
  state.set({ notice: undefined });
  location.hash = sendHash(id);
}

/** With the first session that is kept here, what the browser is asked for now. */
const saved = () =>
  t(state.get().sessions.length === 1 && asksQuietly() ? 'end.saved-first' : 'end.saved');

/** Back to the question how it went, with the learner who was asked about. */
async function back(d: Draft, all: store.Finished[]) {
  const draft = { ...d, updated: new Date().toISOString() };
  if (!(await keep(() => store.unsaveSessions(draft, all)))) return;
  if (state.learner()?.id !== d.learner) await choose(d.learner);
  location.hash = linesHash(d.lines);
}
