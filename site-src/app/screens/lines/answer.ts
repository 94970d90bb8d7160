// What the check says: kindly, the way to look again first; then every place with the reason for
// it.
import { html, nothing, type TemplateResult } from 'lit-html';
import { t } from '../../i18n.ts';
import { type Found, type Hit, written } from '../../marking/check.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import * as state from '../../state.ts';
import { why } from '../../text/explain.ts';
import { letterAt, letterName } from '../../text/names.ts';
import type { Place } from '../../types.ts';
import { stroke } from '../parts/pencil.ts';
import { arabic } from '../parts/words.ts';

/** The line that sums up: what was found, and where to look once more. */
export function summary(p: Practice): string {
  const r = practice.result(p);
  const n = r.found.filter((f) => !f.e.unwritten).length;
  const of = n + r.missed.length;
  const extra = r.extra.length;
  if (of === 0) return t(extra ? 'told.none-marked' : 'told.none');
  if (r.missed.length === 0)
    return t(extra ? 'told.all-extra' : 'told.all', { n: extra || of, of });
  return t('told.some', { n, of, a: p.verses[r.missed[0]!.v]!.a });
}

/** The lists of what was missed, marked elsewhere, and found. */
export function answer(p: Practice) {
  const r = practice.result(p);
  const { catalogue, settings } = state.get();
  const reason = (x: Hit) => why({ ...catalogue, settings }, p.verses, x.v, x.e);
  const at = (x: Hit): Place => ({ v: x.v, w: x.e.w, l: x.e.l });
  const missed = r.missed.map((m) =>
    item(p, at(m), 'missed', m.near ? t('told.near') : '', reason(m)),
  );
  const extra = r.extra.map(({ mark, other }) => {
    const words = { letter: letterName(letterAt(p.verses, mark)), rule: p.rule!.name };
    return item(p, mark, 'extra', t(other ? 'told.other-stop' : 'told.extra-why', words));
  });
  const found = r.found.map((f) => item(p, at(f), 'found', counted(f), reason(f)));
  return html`
    ${list('missed', missed, true)} ${list('extra', extra, true)} ${list('found', found, false)}
  `;
}

const list = (key: 'missed' | 'extra' | 'found', items: TemplateResult[], open: boolean) =>
  items.length
    ? html`<details class="told ${key}" ?open=${open} data-t=${key}>
        <summary>${stroke(key, `var(--${key})`)}${t(`told.${key}`, { n: items.length })}</summary>
        <ul>
          ${items}
        </ul>
      </details>`
    : nothing;

function item(p: Practice, at: Place, cls: string, ...words: string[]) {
  const verse = p.verses[at.v]!;
  const show = () => practice.set({ explained: at, caret: at });
  return html`<li class=${cls}>
    <button class="word-link" @click=${show} aria-label=${t('told.show', { a: verse.a })}>
      ${arabic(verse.words[at.w]!.text)}
    </button>
    <p>${words.filter(Boolean).join(' ')}</p>
  </li>`;
}

const counted = (f: Found): string =>
  f.count === 'none' ? '' : t(`told.count-${f.count}`, { n: f.mark.count, want: f.want });

/** How many places there are in each verse, for a hint that gives no letter away. */
export function perVerse(p: Practice): { a: number; n: number }[] {
  const all = written(p.verses, [p.index], practice.stops(p));
  return p.verses
    .map((v, i) => ({ a: v.a, n: all.filter((x) => x.v === i).length }))
    .filter((x) => x.n);
}
