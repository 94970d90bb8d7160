// Lists of what the check says: letters with the reason, and each reason once for all letters that
// share it.
import { html, nothing } from 'lit-html';
import { groupBy } from '../../group.ts';
import { t } from '../../i18n.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import { stroke } from '../parts/pencil.ts';
import { letterAt, letterName } from '../../text/names.ts';
import type { Place } from '../../types.ts';
import { arabic } from '../parts/words.ts';

export type Kind = 'missed' | 'extra' | 'alike' | 'found';

/** A letter and what is said of it. */
export interface Item {
  at: Place;
  words: string;
}

/** The list of a kind; none where it is empty. */
export function list(p: Practice, key: Kind, items: Item[], open: boolean) {
  if (!items.length) return nothing;
  const mark = key === 'alike' ? 'found' : key;
  const title = key === 'missed' && p.draft.paper ? 'places' : key;
  return html`<details class="told ${key}" ?open=${open} data-t=${key}>
    <summary>${stroke(mark, `var(--${mark})`)}${t(`told.${title}`, { n: items.length })}</summary>
    ${rows(p, mark, items)}
  </details>`;
}

/** The letters with what is said of them; cls is a class of each row. */
export const rows = (p: Practice, cls: string, items: Item[]) => html`
  <ul>
    ${[...groupBy(items, (x) => x.words)].map(([words, own]) => row(p, cls, words, own))}
  </ul>
`;

const row = (p: Practice, key: string, words: string, items: Item[]) => html`
  <li class=${key}>
    <div class="word-links" dir="rtl">${items.map((x) => link(p, x.at))}</div>
    <p>${words}</p>
  </li>
`;

/** A word that leads to its letter, in the letter's panel. */
function link(p: Practice, at: Place) {
  const verse = p.verses[at.v]!;
  const word = verse.words[at.w]!.text;
  const letter = letterName(letterAt(p.verses, at));
  const show = () => practice.set({ explained: at, caret: at });
  return html`<button
    class="word-link"
    data-t="told-${at.v}-${at.w}-${at.l}"
    @click=${show}
    aria-label=${t('told.show', { letter, word, a: verse.a })}
  >
    ${arabic(word)}
  </button>`;
}
