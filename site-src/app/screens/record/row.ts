// A session in the record, with a way to remove it.
import { html, nothing } from 'lit-html';
import { keep } from '../../actions/keep.ts';
import { dayName, t } from '../../i18n.ts';
import { shareOf, tallies } from '../../record/totals.ts';
import * as state from '../../state.ts';
import * as store from '../../store/store.ts';
import { linesName } from '../../text/names.ts';
import type { Entry, Tally } from '../../types.ts';
import { entryHash } from '../parts/entry.ts';
import { pencil, swatch } from '../parts/pencil.ts';

export function row(s: Entry) {
  const { catalogue } = state.get();
  return html`<li data-t="session">
    <div>
      <p>${what(s)}</p>
      <p class="quiet">
        <a href=${entryHash(catalogue, s)}>${linesName(catalogue.surahs, s.from, s.to)}</a
        >${result(s)}
      </p>
    </div>
    <button
      class="plain"
      data-t="remove"
      aria-label=${t('record.remove-this', { day: dayName(s.day) })}
      @click=${() => void remove(s)}
    >
      ${t('record.remove')}
    </button>
  </li>`;
}

/** The rules that were marked; of several, how many places of each were found. */
function what(s: Entry) {
  const all = tallies(s);
  if (!all.length) return html`<b>${t('record.reading')}</b>`;
  return all.map((x, i) => [i ? ' · ' : nothing, ruleOf(x), all.length > 1 ? share(x) : nothing]);
}

function ruleOf({ rule: id }: Tally) {
  const rule = state.get().catalogue.rules.find((r) => r.id === id);
  return rule
    ? html`<b class="inked" .style=${pencil(rule.family)}>${swatch(rule.family)}${rule.name}</b>`
    : html`<b>${id}</b>`;
}

function share(x: Tally) {
  const { found, of } = shareOf([x]);
  return of ? ` ${t('record.of', { n: found, of })}` : nothing;
}

/** How it went, and how much was found. */
const result = (s: Entry) =>
  [t(`outcome.${s.outcome}`), s.paper ? t('record.on-paper') : '', found(s)]
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

async function remove(s: Entry) {
  if (!(await keep(() => store.removeSession(s.id)))) return;
  const action = { label: t('undo'), run: () => void keep(() => store.bringBack(s.id)) };
  state.set({ notice: { text: t('record.removed'), action } });
}
