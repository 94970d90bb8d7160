// A session in the record, with ways to open and to remove it.
import { html, nothing } from 'lit-html';
import { remove } from '../../actions/sessions.ts';
import { dayName, t } from '../../i18n.ts';
import { shareOf, tallies } from '../../record/totals.ts';
import { sessionHash } from '../../share/link.ts';
import * as state from '../../state.ts';
import { linesName } from '../../text/names.ts';
import type { Entry, Tally } from '../../types.ts';
import { entryHash } from '../parts/entry.ts';
import { pencil, swatch } from '../parts/pencil.ts';

export const row = (s: Entry) =>
  html`<li data-t="session">
    <div>${summary(s)}</div>
    <div class="row-buttons">
      <a
        class="button plain"
        href=${sessionHash(s.id)}
        data-t="open-session"
        aria-label=${t('record.open-this', { day: dayName(s.day) })}
        >${t('record.open')}</a
      >
      <button
        class="plain"
        data-t="remove"
        aria-label=${t('record.remove-this', { day: dayName(s.day) })}
        @click=${() => void remove(s.id)}
      >
        ${t('record.remove')}
      </button>
    </div>
  </li>`;

/** What was marked, in which lines, how it went, and what was noted. */
export function summary(s: Entry) {
  const { catalogue } = state.get();
  return html`<p>${what(s)}</p>
    <p class="quiet">
      <a href=${entryHash(catalogue, s)}>${linesName(catalogue.surahs, s.from, s.to)}</a
      >${result(s)}
    </p>
    ${s.note ? note(s.note) : nothing}`;
}

export const note = (text: string) =>
  html`<p class="note" dir="auto" data-t="note" .textContent=${text}></p>`;

/** The rules that were marked; of several, how many places of each were found. */
function what(s: Entry) {
  const all = tallies(s);
  if (!all.length) return html`<b>${t('record.reading')}</b>`;
  return all.map((x, i) => [
    i ? ' · ' : nothing,
    ruleName(x.rule),
    all.length > 1 ? share(x) : nothing,
  ]);
}

/** A rule with the stroke of its pencil; one that is not known any more by its id. */
export function ruleName(id: string) {
  const rule = state.get().catalogue.rules.find((r) => r.id === id);
  return rule
    ? html`<b class="inked" .style=${pencil(rule.family)}>${swatch(rule.family)}${rule.name}</b>`
    : html`<b>${id}</b>`;
}

function share(x: Tally) {
  const { found, of } = shareOf([x]);
  return of ? ` ${t('record.of', { n: found, of })}` : nothing;
}

/** How it went, where, how much was found, and how long it took. */
const result = (s: Entry) =>
  [
    t(`outcome.${s.outcome}`),
    s.paper ? t('record.on-paper') : '',
    s.together ? t('record.together') : '',
    found(s),
    s.minutes === undefined ? '' : t('record.minutes', { n: s.minutes }),
  ]
    .filter(Boolean)
    .map((x) => ` · ${x}`)
    .join('');

/** Places found at first and after looking again; else those of the only rule. */
function found(s: Entry): string {
  const all = tallies(s);
  const { found: n, of } = shareOf(all);
  if (s.looked !== undefined && s.looked < n)
    return t('record.looked', { looked: s.looked, n, of });
  return of && all.length === 1 ? t('record.found', { n, of }) : '';
}
