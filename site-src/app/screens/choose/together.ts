// For whom lines are chosen, where several are to read them.
import { html, nothing } from 'lit-html';
import { join, t } from '../../i18n.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { called } from '../parts/words.ts';

export function together(s: State) {
  const l = state.learner(s);
  const others = state.readers(s).filter((x) => s.together.includes(x.id));
  if (!l || !others.length) return nothing;
  const child = join([l, ...others].map((x) => called(x)));
  return html`<div class="row" data-t="together-for">
    <p>${t('together.who', { child })}</p>
    <button class="plain" data-t="alone" @click=${() => state.set({ together: [] })}>
      ${t('together.alone', { child: called(l) })}
    </button>
  </div>`;
}
