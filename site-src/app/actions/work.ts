// Takes over what a teacher gave, and what a family sent back.
import { t } from '../i18n.ts';
import { lessonsMissing } from '../record/work.ts';
import { today } from '../record/week.ts';
import { linesHash } from '../share/link.ts';
import { type Result, sessionOf } from '../share/result.ts';
import type { Given } from '../share/work.ts';
import * as state from '../state.ts';
import * as store from '../store/store.ts';
import type { Learner, Work } from '../types.ts';
import { keep } from './keep.ts';
import { choose } from './learner.ts';
import { changeSettings } from './settings.ts';
import { offerUndo } from './undo.ts';

/** What of a teacher's settings is taken over with the work. */
export interface Taking {
  taught: boolean;
  held: boolean;
}

/** Keeps work for a learner, who is reading from now on, and opens its lines. */
export async function start(learner: string, g: Given, taking: Taking) {
  const { lines, times, say } = g;
  const work: Work = { lines, since: today(), times, say };
  await choose(learner);
  if (!(await keep(() => store.changeLearner(learner, { work })))) return;
  if (taking.taught) await addLessons(learner, g.lessons);
  if (taking.held && g.held) await changeSettings(g.held);
  location.hash = linesHash(lines);
}

/** Counts lessons as taught. What is taught already stays as it is. */
async function addLessons(learner: string, ids: string[]) {
  const there = new Set(state.taughtOf(learner).map((x) => x.rule));
  const rules = lessonsMissing(state.get().catalogue, ids, there).flatMap((l) => l.rules);
  const entries = rules
    .filter((rule) => !there.has(rule))
    .map((rule) => ({ learner, rule, since: today(), known: '' }));
  if (entries.length) await keep(() => store.addTaught(learner, entries));
}

/** Takes a learner's work away, with a way back. */
export async function putAway({ id, work }: Learner) {
  if (!work || !(await keep(() => store.changeLearner(id, { work: undefined })))) return;
  offerUndo(t('work.put-away'), () => keep(() => store.changeLearner(id, { work })));
}

/** Takes a session that was held elsewhere into a learner's record, with a way back. */
export async function take(r: Result, learner: string, name: string) {
  const session = { ...sessionOf(r, learner), updated: new Date().toISOString() };
  if (!(await keep(() => store.addSession(session)))) return;
  offerUndo(t('result.taken', { child: name }), () => keep(() => store.removeSession(session.id)));
}
