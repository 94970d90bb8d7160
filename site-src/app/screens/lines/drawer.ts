// The adult's help. It stays shut while the child works, and closes again at every step.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import { called } from '../parts/words.ts';
import { perVerse } from './answer.ts';

export const drawer = (p: Practice) => html`
  <div class="drawer">
    <button
      class="handle"
      data-t="drawer"
      aria-expanded=${p.drawer}
      aria-controls="help"
      @click=${() => practice.set({ drawer: !p.drawer })}
    >
      ${t('drawer.title')}
    </button>
    <div id="help" class="help" ?hidden=${!p.drawer}>${p.drawer ? help(p) : nothing}</div>
  </div>
`;

function help(p: Practice) {
  const { phase } = p.draft;
  const marking = p.rule && (phase === 'find' || phase === 'check');
  return html`
    <p>${t(`drawer.say.${phase}`, { child: called(practice.learner(p)) })}</p>
    ${p.rule ? html`<p>${p.rule.short}</p>` : nothing} ${phase === 'find' ? hint(p) : nothing}
    <div class="row">
      ${marking ? answerButton(p.answer) : nothing} ${phase === 'find' ? askButton(p.ask) : nothing}
    </div>
    <p class="quiet">${t('drawer.stops')}</p>
    <p class="quiet">${t('drawer.caution')}</p>
    <p class="quiet keys">${t('drawer.keys')}</p>
  `;
}

/** How many places each verse has. */
function hint(p: Practice) {
  const verses = p.rule ? perVerse(p) : [];
  const n = verses.reduce((sum, x) => sum + x.n, 0);
  const words = verses.map((x) => t('drawer.in-verse', x)).join(' · ');
  return html`<p data-t="hint">
    ${n ? `${t('drawer.places', { n })} ${words}` : t('drawer.no-places')}
  </p>`;
}

const answerButton = (shown: boolean) => html`
  <button class="plain" data-t="answer" aria-pressed=${shown} @click=${practice.showAnswer}>
    ${t(shown ? 'drawer.hide' : 'drawer.show')}
  </button>
`;

const askButton = (asks: boolean) => html`
  <button
    class="plain"
    data-t="ask"
    aria-pressed=${asks}
    @click=${() => practice.set({ ask: !asks, drawer: asks })}
  >
    ${t(asks ? 'drawer.mark' : 'drawer.ask')}
  </button>
`;
