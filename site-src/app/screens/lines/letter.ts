// How the chosen letter is read, in a panel above the thumb.
import { html, nothing, type TemplateResult } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';
import { ref } from 'lit-html/directives/ref.js';
import { beat } from '../../beat/beat.ts';
import { t } from '../../i18n.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import { linesHash } from '../../share/link.ts';
import * as state from '../../state.ts';
import { explain, type Explained } from '../../text/explain.ts';
import type { Place, Rule } from '../../types.ts';
import { lessonPath } from '../parts/lesson.ts';
import { pencil, swatch } from '../parts/pencil.ts';
import { arabic } from '../parts/words.ts';
import { known } from './colours.ts';

export const letter = (p: Practice) => html`
  <section class="panel" ?hidden=${!p.explained} aria-live="polite" data-t="letter">
    ${p.explained ? explained(p, p.explained) : nothing}
  </section>
`;

/** What the keyboard was on when the panel opened. */
let opener: Element | null = null;
let open = false;

/** After each drawing. */
export function letterDrawn(p: Practice) {
  if (p.explained && !open) opener = document.activeElement;
  open = !!p.explained;
}

/**
 * Closes the panel, if it is open; whether it was. The keyboard goes back to what opened it: a row
 * of what the check says, or else the word.
 */
export function closeLetter(): boolean {
  if (!practice.get()?.explained) return false;
  practice.set({ explained: undefined, ask: false });
  const row = opener?.isConnected && opener.closest<HTMLElement>('.word-link');
  (row || document.querySelector<HTMLElement>('[data-t=passage]'))?.focus({ preventScroll: true });
  return true;
}

function explained(p: Practice, at: Place) {
  const x = explain(state.book(), p.verses, practice.stops(p), at, known(p));
  const word = p.verses[at.v]!.words[at.w]!.text;
  return html`
    <div class="row">
      <h2 data-t="letter-name">${x.title}</h2>
      ${arabic(word, 'ar small')}
      <button class="plain" data-t="letter-close" @click=${closeLetter}>
        ${t('explain.close')}
      </button>
    </div>
    ${x.facts.map((f) => html`<p>${f}</p>`)}
    ${x.rules.map(
      ({ rule, why, detail }) =>
        html`<p class="rule-why" .style=${pencil(rule.family)}>
          ${swatch(rule.family)}${lesson(p, rule, html`<b>${rule.name}</b>`)} ${why} ${detail}
        </p>`,
    )}
    ${held(x.rules)} ${x.later.length ? later(p, x.later) : nothing}
  `;
}

/** Counts to be seen, folded away until they are asked for. */
function held(rules: Explained['rules']) {
  const lengths = rules
    .filter((x) => x.held)
    .map((x) => ({ name: t('beat.length', { rule: x.rule.name, n: x.held }), counts: x.held }));
  if (!lengths.length) return nothing;
  const put = (host?: Element) => {
    if (host) beat(host as HTMLElement, lengths, beatWords());
  };
  return html`<details class="opens" data-t="count-along">
    <summary>${t('beat.title')}</summary>
    ${guard(
      lengths.map((x) => x.name),
      () => html`<div class="beat" ${ref(put)}></div>`,
    )}
  </details>`;
}

const beatWords = () => ({
  hint: t('beat.hint'),
  still: t('beat.still'),
  tap: t('beat.tap'),
  more: t('beat.more'),
  pace: (seconds: string) => t('beat.pace', { seconds }),
});

/** Rules that act here too and have not been taught. */
const later = (p: Practice, rules: Rule[]) => html`
  <p class="quiet" data-t="later">${t('explain.later')}</p>
  <p class="quiet" data-t="later-lessons">
    ${t('explain.ahead')} ${rules.map((r, i) => [i ? ' · ' : '', lesson(p, r, r.name)])}
  </p>
`;

/** To the rule's lesson, with the address of these lines, so that the page can lead back. */
const lesson = (p: Practice, r: Rule, name: TemplateResult | string) => {
  const back = linesHash(p.draft.lines);
  return html`<a href=${lessonPath(r.lesson, back)} data-t="lesson-${r.id}">${name}</a>`;
};
