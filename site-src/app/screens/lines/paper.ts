// Lines that were marked on paper: how many were found, compared with how many there are. Nobody
// has to say.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import { type Checked, hidden, placesIn } from '../../practice/steps.ts';
import { swatch } from '../parts/pencil.ts';

export const onPaper = (p: Practice, all: Checked[]) => html`
  <section class="card on-paper" data-t="on-paper">
    ${all.filter(placesIn).map((r) => question(p, r))}
    <p>${t('paper.verses')}</p>
    <ul class="hides">
      ${[...hidden(p, all)].map(
        ([v, n]) => html`<li>${t('drawer.in-verse', { a: p.verses[v]!.a, n })}</li>`,
      )}
    </ul>
    <p class="quiet">${t('paper.free')}</p>
  </section>
`;

/** How many of a pencil's places were found. */
function question(p: Practice, r: Checked) {
  const of = placesIn(r);
  const id = `paper-${r.pencil.id}`;
  const said = p.draft.paper?.[r.pencil.id];
  const typed = (e: Event) => say(p, r.pencil.id, (e.target as HTMLInputElement).value, of);
  return html`<div class="field">
    <label for=${id}>${swatch(r.pencil.family)}${t('paper.found', { rule: r.pencil.name })}</label>
    <input
      id=${id}
      type="number"
      inputmode="numeric"
      min="0"
      max=${of}
      .value=${said === undefined ? '' : String(said)}
      data-t=${id}
      @change=${typed}
    />
    <span class="quiet" aria-live="polite"
      >${
        said === undefined
          ? nothing
          : t(said < of ? 'paper.left' : 'paper.all', { n: of - said, of })
      }</span
    >
  </div>`;
}

function say(p: Practice, pencil: string, typed: string, of: number) {
  const { [pencil]: _, ...others } = p.draft.paper ?? {};
  const n = Math.round(Number(typed));
  const told = typed.trim() !== '' && Number.isFinite(n);
  const paper = told ? { ...others, [pencil]: Math.min(of, Math.max(0, n)) } : others;
  practice.change({ paper });
}
