// Begins lines from the view of everyone: with one learner, or with several who read the same.
import { choose } from '../../actions/learner.ts';
import { linesHash } from '../../share/link.ts';
import * as state from '../../state.ts';
import type { Learner, Lines } from '../../types.ts';

/** Opens lines for a learner, who reads them alone; without lines, the choice of them. */
export const start = (l: Learner, lines: Lines | undefined) => begin([l], lines);

/** Opens lines for the first of some learners, whom the others join. */
export async function begin([first, ...others]: Learner[], lines: Lines | undefined) {
  if (!first) return;
  await choose(first.id);
  state.set({ together: others.map((l) => l.id), ticked: [], home: 'learners' });
  location.hash = lines ? linesHash(lines) : '#/lines';
}
