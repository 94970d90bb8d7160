// Puts learners into the archive and brings them back, or deletes them.
import { t } from '../i18n.ts';
import { inOrder } from '../record/people.ts';
import * as state from '../state.ts';
import * as store from '../store/store.ts';
import { called } from '../text/names.ts';
import type { Learner } from '../types.ts';
import { keep } from './keep.ts';
import { choose } from './learner.ts';
import { offerUndo } from './undo.ts';

/** Puts a learner into the archive: nothing is planned any more, and the record stays. */
export async function archive(l: Learner) {
  if (!(await setArchived(l, new Date().toISOString()))) return;
  await chooseAnother(l);
  offerUndo(t('people.archived', { child: called(l) }), () => bringBack(l));
}

/** Takes a learner out of the archive, and in hand. */
export async function bringBack(l: Learner) {
  if (await setArchived(l, undefined)) await choose(l.id);
}

const setArchived = (l: Learner, archived: string | undefined) =>
  keep(() => store.changeLearner(l.id, { archived }));

/** Deletes a learner with everything that belongs to it. */
export async function remove(l: Learner) {
  if (!(await keep(() => store.removeLearner(l.id)))) return;
  await chooseAnother(l);
  state.set({ notice: { text: t('people.removed', { child: called(l) }) } });
}

/** Somebody else is in hand when a learner leaves the lists: the one who read last. */
async function chooseAnother({ id }: Learner) {
  if (state.get().settings.learner !== id) return;
  const [next] = inOrder(state.readers(), state.get().sessions, 'read');
  await choose(next?.id ?? '');
}
