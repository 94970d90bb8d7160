// Which learner a link is for.
import { html } from 'lit-html';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Learner } from '../../types.ts';
import { chips } from '../parts/chips.ts';
import { called } from '../parts/words.ts';
import { receive, received } from './form.ts';

/** The learner who was chosen, or the only one there is. */
export function chosen(s: State): Learner | undefined {
  const all = state.readers(s);
  return all.length === 1 ? all[0] : all.find((l) => l.id === received().learner);
}

/** Asks which of several; says it of the only one. */
export function whose(s: State, ask: string, say: (child: string) => string) {
  const all = state.readers(s);
  if (all.length === 1) return html`<p data-t="for">${say(called(all[0]))}</p>`;
  const words = (id: string) => called(all.find((l) => l.id === id));
  const ids = all.map((l) => l.id);
  return chips(ask, 'for', ids, chosen(s)?.id ?? '', words, (learner) => receive({ learner }));
}
