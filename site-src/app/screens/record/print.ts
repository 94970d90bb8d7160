// The record on paper, as a page to read or a sheet to tick, and as a table for spreadsheets.
import { html, nothing } from 'lit-html';
import { saveTable } from '../../actions/table.ts';
import { t } from '../../i18n.ts';
import * as state from '../../state.ts';

/** Sessions that are printed, the newest: about twenty pages. */
const PRINTED = 500;

export const output = (n: number) => html`
  <section class="card no-print" data-t="output">
    <h2>${t('record.output')}</h2>
    <div class="row">
      ${
        n
          ? html`<button class="big" data-t="print-record" @click=${print}>
                ${t('record.print')}
              </button>
              <button class="big" data-t="save-table" @click=${saveTable}>
                ${t('record.table')}
              </button>`
          : nothing
      }
      <a class="button plain" href="#/print?sheet=record" data-t="print-empty"
        >${t('record.print-empty')}</a
      >
    </div>
    ${n ? html`<p class="quiet">${t('record.table-what')}</p>` : nothing}
  </section>
`;

/** Lists what is to be printed, and hands the page to the browser once it is drawn. */
function print() {
  const { listed } = state.get();
  document.querySelectorAll<HTMLDetailsElement>('.by-rule').forEach((x) => (x.open = true));
  state.set({ listed: Math.max(listed, PRINTED) });
  before = listed;
  requestAnimationFrame(() => setTimeout(() => window.print()));
}

/** How many sessions were listed before they were printed. */
let before: number | undefined;

function printed() {
  if (before !== undefined) state.set({ listed: before });
  before = undefined;
}

/** While the record is shown. */
export const printing = (on: boolean) =>
  on ? addEventListener('afterprint', printed) : removeEventListener('afterprint', printed);
