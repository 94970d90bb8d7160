// The adult's help: what to say, now, with a stuck child, and after the check. It stays shut while
// the child works, and closes again at every step.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import { written } from '../../marking/check.ts';
import { STOPS } from '../../marking/pencils.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import * as state from '../../state.ts';
import type { Rule } from '../../types.ts';
import { called } from '../parts/words.ts';

export const drawer = (p: Practice) => html`
  <div class="drawer">
    <button
      class="handle"
      data-t="drawer"
      aria-expanded=${p.drawer}
      aria-controls="help"
      @click=${() => practice.set({ drawer: !p.drawer, case: false })}
    >
      ${t('drawer.title')}
    </button>
    <div id="help" class="help" ?hidden=${!p.drawer}>${p.drawer ? help(p) : nothing}</div>
  </div>
`;

function help(p: Practice) {
  const { phase } = p.draft;
  const find = phase === 'find';
  const child = called(practice.learner(p));
  return html`
    <p>${t(`drawer.say.${saying(p)}`, { child })}</p>
    ${find ? rulesInHand(p).map((r) => looking(r, child)) : nothing} ${find ? hint(p) : nothing}
    <div class="row">
      ${find && practice.marksLetters(p) ? answerButton(p.answer) : nothing}
      ${find ? askButton(p.ask) : nothing}
    </div>
    ${p.pencils.some((x) => x.id === STOPS) || phase === 'read' ? stopsHelp() : nothing}
    <p class="quiet">${t('drawer.caution')}</p>
    <p class="quiet keys">${t('drawer.keys')}</p>
  `;
}

/** What there is to say at a step; the check has a word for each of its stages. */
function saying({ draft: { phase, told, paper } }: Practice) {
  if (phase !== 'check') return phase;
  return paper ? 'paper' : told === 'some' ? 'look' : 'check';
}

const rulesInHand = (p: Practice) => {
  const rules = practice.inHand(p)?.rules ?? [];
  return rules.length === 1 ? [state.get().catalogue.rules[rules[0]!]!] : [];
};

/** What to look for, and what to say to a child who is stuck. */
const looking = (r: Rule, child: string) => html`
  <p>${r.short}</p>
  ${
    r.stuck
      ? html`<p data-t="stuck">${t('drawer.stuck', { child })} <q>${r.stuck}</q></p>`
      : nothing
  }
`;

const stopsHelp = () => html`<p class="quiet">${t('drawer.stops')}</p>`;

/** How many places of the pencil in hand each verse has, for a hint that gives no letter away. */
function perVerse(p: Practice): { a: number; n: number }[] {
  const all = written(p.verses, practice.inHand(p)?.rules ?? [], practice.stops(p));
  return p.verses
    .map((v, i) => ({ a: v.a, n: all.filter((x) => x.v === i).length }))
    .filter((x) => x.n);
}

function hint(p: Practice) {
  if (!practice.marksLetters(p)) return nothing;
  const verses = perVerse(p);
  const n = verses.reduce((sum, x) => sum + x.n, 0);
  const words = verses.map((x) => t('drawer.in-verse', x)).join(' · ');
  const most = verses.reduce((a, b) => (b.n > a.n ? b : a), verses[0] ?? { a: 0, n: 0 });
  return html`<p data-t="hint">
    ${n ? `${t('drawer.places', { n })} ${words}.` : t('drawer.no-places')}
    ${n ? html`<q>${t('drawer.hint', { a: most.a, n: most.n })}</q>` : nothing}
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
