// The print screen: what to print on one side, how it will look on the other, and the browser's own
// print.
import '../../later.ts';
import { html } from 'lit-html';
import { apply } from '../../colour/pencils.ts';
import { t } from '../../i18n.ts';
import { hasLines } from '../../paper/options.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { linesName } from '../../text/names.ts';
import { parseHash } from '../../share/link.ts';
import type { Screen } from '../screen.ts';
import { form } from './form.ts';
import { type Layout, pageCount } from './layout.ts';
import { enterPreview, leavePreview, paintPreview, preview } from './preview.ts';
import { leavePrinting, readAddress } from './printing.ts';

/** Once there are pages, the name of the sheet: it is what the browser calls a file of them. */
function title({ catalogue, printing }: State): string {
  if (!printing?.layout) return t('print.title');
  const { options: o } = printing.layout;
  const kind = t(`print.kind.${o.kind}`);
  return hasLines(o) ? `${linesName(catalogue.surahs, o.from, o.to)} ${kind}` : kind;
}

function view(s: State) {
  const { options, problem, layout, busy } = s.printing!;
  const said = problem ? t(problem.key, problem.vars) : '';
  return html`
    <main class="print">
      <div class="print-side">
        <h1 tabindex="-1">${t('print.title')}</h1>
        <p class="problem" role="alert" data-t="problem">${said}</p>
        ${form(s, options)}
        <p class="quiet">${t('print.respect')}</p>
      </div>
      <div class="print-go">
        <p class="print-status" role="status" data-t="print-status">${status(layout, busy)}</p>
        <button
          class="main"
          type="button"
          ?disabled=${busy || !layout}
          data-t="print-now"
          @click=${() => window.print()}
        >
          ${t('print.now')}
        </button>
      </div>
      ${preview(layout)}
    </main>
  `;
}

function status(l: Layout | undefined, busy: boolean): string {
  if (busy) return t('print.laying-out');
  if (!l) return '';
  const pages = t('print.pages', { n: pageCount(l) });
  if (l.sheet !== 'card') return pages;
  return `${pages} ${t(l.inked.length ? 'print.card-fold' : 'print.card-empty')}`;
}

/** Another address of this screen does not enter it anew. */
function follow() {
  if (parseHash(state.get().catalogue, location.hash).name === 'print') readAddress();
}

export const print: Screen = {
  title,
  view,
  enter() {
    const { catalogue, settings } = state.get();
    apply(catalogue, settings.pencils);
    enterPreview();
    readAddress();
    addEventListener('hashchange', follow);
  },
  drawn(s) {
    paintPreview(s.printing?.layout);
    document.title = t('page.title', { screen: title(s) });
  },
  leave() {
    removeEventListener('hashchange', follow);
    leavePrinting();
    leavePreview();
  },
};
