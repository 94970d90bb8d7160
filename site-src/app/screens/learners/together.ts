// The same lines for several learners: those that are ticked.
import { html } from 'lit-html';
import { join, t } from '../../i18n.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { called } from '../parts/words.ts';
import type { Row } from './cells.ts';
import { begin } from './start.ts';

export function together(s: State, rows: Row[]) {
  const chosen = rows.filter((r) => s.ticked.includes(r.learner.id));
  const ready = chosen.length > 1;
  const read = chosen.map((r) => r.learner);
  const lines = chosen[0]?.next?.lines;
  const children = join(read.map((l) => called(l)));
  return html`
    <section class="card" data-t="together">
      <h2>${t('together.title')}</h2>
      <p class="quiet" role="status" data-t="together-who">
        ${ready ? t('together.who', { child: children }) : t('together.what')}
      </p>
      <div class="row">
        <button
          class="big"
          data-t="same-lines"
          ?disabled=${!ready || !lines}
          @click=${() => void begin(read, lines)}
        >
          ${t('together.same')}
        </button>
        <button
          class="plain"
          data-t="same-choose"
          ?disabled=${!ready}
          @click=${() => void begin(read, undefined)}
        >
          ${t('together.choose')}
        </button>
        ${tickAll(s, rows)}
      </div>
    </section>
  `;
}

/** Ticks everyone, or nobody where everyone is. */
function tickAll(s: State, rows: Row[]) {
  const all = rows.every((r) => s.ticked.includes(r.learner.id));
  const ticked = all ? [] : rows.map((r) => r.learner.id);
  return html`<button class="plain" data-t="tick-all" @click=${() => state.set({ ticked })}>
    ${t(all ? 'together.none' : 'together.all')}
  </button>`;
}
