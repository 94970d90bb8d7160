// The disc beside a learner's name: a colour, and always the first letter as well.
import { html } from 'lit-html';
import { colourOf, initial } from '../../record/people.ts';
import * as state from '../../state.ts';
import type { Learner } from '../../types.ts';
import { called } from './words.ts';

/** The style that gives an element a learner's colour. */
export const own = (colour: number) => `--own:var(--l-${colour})`;

/** Decoration: the name stands beside it. */
export const disc = (l: Learner) =>
  html`<span class="disc" aria-hidden="true" .style=${own(colourOf(l, state.get().learners))}
    >${initial(called(l))}</span
  >`;
