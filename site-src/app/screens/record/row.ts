// A session in the record, with a way to remove it.
import { html, nothing } from 'lit-html';
import { keep } from '../../actions/keep.ts';
import { dayName, t } from '../../i18n.ts';
import { linesHash } from '../../share/link.ts';
import * as state from '../../state.ts';
import * as store from '../../store/store.ts';
import { session } from '../../store/snapshot.ts';
import { linesName } from '../../text/names.ts';
import type { Entry } from '../../types.ts';
import { pencil, swatch } from '../parts/pencil.ts';
import { takeRow } from '../parts/rows.ts';

export function row(s: Entry) {
  const { rules, surahs } = state.get().catalogue;
  const rule = rules.find((r) => r.id === s.rule);
  const lines = linesHash({ rule: rule?.id ?? '', from: s.from, to: s.to });
  const press = (e: Event) => void takeRow(e.currentTarget as HTMLElement, () => remove(s));
  return html`<li data-t="session">
    <div>
      <p>
        <b class=${rule ? 'inked' : nothing} .style=${rule ? pencil(rule.family) : ''}
          >${rule ? swatch(rule.family) : nothing}${rule?.name ?? (s.rule || t('record.reading'))}</b
        >
      </p>
      <p class="quiet"><a href=${lines}>${linesName(surahs, s.from, s.to)}</a>${result(s)}</p>
    </div>
    <button
      class="plain"
      data-t="remove"
      aria-label=${t('record.remove-this', { day: dayName(s.day) })}
      @click=${press}
    >
      ${t('record.remove')}
    </button>
  </li>`;
}

/** How it went, and how much of the rule was found. */
function result(s: Entry): string {
  const n = s.found + s.missed;
  const found = s.rule && n > 0 ? ` · ${t('record.found', { n: s.found, of: n })}` : '';
  return ` · ${t(`outcome.${s.outcome}`)}${found}`;
}

async function remove(s: Entry) {
  // With its marks, which Undo brings back; undefined where they are damaged.
  const was = session(s.id);
  if (!(await keep(() => was.then(() => store.dropSession(s.id))))) return false;
  const whole = await was;
  const undo = whole && {
    label: t('undo'),
    run: () => void keep(() => store.putSession(whole)),
  };
  state.set({ notice: { text: t('record.removed'), ...(undo && { action: undo }) } });
  return true;
}
