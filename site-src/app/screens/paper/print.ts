// The print screen: what to print on one side, how it will look on the other, and the browser's own
// print.
import '../../later.ts';
import { html, nothing } from 'lit-html';
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
import { lacks, seeBetter } from './note.ts';
import { enterPreview, leavePreview, paintPreview, preview } from './preview.ts';
import { layOutAgain, leavePrinting, type Printing, readAddress, stop } from './printing.ts';

/** Once there are pages, the name of the sheet: it is what the browser calls a file of them. */
function title({ catalogue, printing }: State): string {
  if (!printing?.layout) return t('print.title');
  const { options: o } = printing.layout;
  if (o.kind === 'booklet') return t('next.juz', { n: o.booklet.juz });
  const kind = t(`print.kind.${o.kind}`);
  return hasLines(o) ? `${linesName(catalogue.surahs, o.from, o.to)} ${kind}` : kind;
}

function view(s: State) {
  const p = s.printing!;
  const said = p.problem ? t(p.problem.key, p.problem.vars) : '';
  return html`
    <main class="print">
      <div class="print-side">
        <h1 tabindex="-1">${t('print.title')}</h1>
        <p class="problem" role="alert" data-t="problem">${said}</p>
        ${form(s, p.options)}
        <p class="quiet">${t('print.respect')}</p>
      </div>
      <div class="print-go">
        ${p.busy && p.progress !== undefined ? progress(p.progress) : nothing}
        <div class="print-status">
          <p role="status" data-t="print-status">${status(p)}</p>
          ${seeBetter(p)}
        </div>
        ${p.stopped ? again() : go(p)}
      </div>
      ${preview(p.layout, p.drawn)}
    </main>
  `;
}

const go = ({ busy, layout }: Printing) => html`
  <button
    class="main"
    type="button"
    ?disabled=${busy || !layout}
    data-t="print-now"
    @click=${() => window.print()}
  >
    ${t('print.now')}
  </button>
`;

const again = () => html`
  <button class="main" type="button" data-t="print-again" @click=${layOutAgain}>
    ${t('print.lay-out')}
  </button>
`;

const progress = (done: number) => html`
  <div class="print-progress">
    <progress aria-label=${t('print.progress')} data-t="print-progress" .value=${done}></progress>
    <button
      type="button"
      class="plain"
      data-t="print-stop"
      data-next='[data-t="print-again"], [data-t="print-now"]'
      @click=${stop}
    >
      ${t('print.stop')}
    </button>
  </div>
`;

function status({ layout: l, busy, stopped }: Printing) {
  if (busy) return t('print.laying-out');
  if (stopped) return t('print.stopped');
  if (!l) return '';
  const lack = lacks(l);
  return [t('print.pages', { n: pageCount(l) }), more(l), lack && html` <b>${lack}</b>`];
}

/** What is to be done with the pages once they are printed. */
function more(l: Layout): string {
  if (l.sheet === 'card' && l.inked.length) return ` ${t('print.card-fold')}`;
  if (l.sheet !== 'booklet' || l.options.booklet.lay !== 'fold') return '';
  return ` ${t('print.sheets', { n: l.sides.length / 2 })}`;
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
    paintPreview(s.printing?.layout, s.printing?.drawn ?? 0);
    document.title = t('page.title', { screen: title(s) });
  },
  leave() {
    removeEventListener('hashchange', follow);
    leavePrinting();
    leavePreview();
  },
};
