// The pencil case: which pencils there are for these lines, and which is in hand.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import { type Pencil, STOPS } from '../../marking/pencils.ts';
import { scrolling } from '../../motion.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import { linesHash } from '../../share/link.ts';
import * as state from '../../state.ts';
import { pencilChips } from '../parts/case.ts';
import { pencil, swatch } from '../parts/pencil.ts';
import { known } from './colours.ts';

/** Characters of a name that fit beside the buttons; a longer one gives way to the Arabic term. */
const LONG = 20;

/** What is written on a pencil. */
function nameOf(x: Pencil): string {
  if (x.id === STOPS) return t('case.stops');
  const rule = state.get().catalogue.rules.find((r) => r.id === x.id);
  return rule && rule.name.length > LONG ? rule.tr : x.name;
}

/** The pencil in hand; with others, all of them, to take one up. */
export function hand(p: Practice) {
  const [one, ...others] = p.pencils;
  if (!one) return nothing;
  if (!others.length)
    return html`<span class="pencil" .style=${pencil(one.family)} data-t="pencil"
      >${swatch(one.family)}${nameOf(one)}</span
    >`;
  return html`<div class="hands" role="group" aria-label=${t('case.hand')} data-t="pencil">
    ${p.pencils.map(
      (x) =>
        html`<button
          class="chip"
          .style=${pencil(x.family)}
          aria-pressed=${x.id === p.hand}
          data-t="hand-${x.id}"
          @click=${(e: Event) => take(x, e.currentTarget as HTMLElement)}
        >
          ${swatch(x.family, x.key)}${nameOf(x)}
        </button>`,
    )}
  </div>`;
}

/** Takes up a pencil, and brings it into sight in its row. */
function take({ id }: Pencil, chip: HTMLElement) {
  practice.set({ hand: id, caret: undefined });
  chip.scrollIntoView({ inline: 'center', block: 'nearest', behavior: scrolling() });
}

/** Opens the case. */
export const opener = (p: Practice) => html`
  <button
    class="plain opener"
    data-t="case"
    aria-expanded=${p.case}
    aria-controls="case"
    aria-label=${t('case.title')}
    title=${t('case.title')}
    @click=${() => practice.set({ case: !p.case, drawer: false })}
  >
    +
  </button>
`;

/** Every pencil that these lines may have: stops, families, and rules that were taught. */
export const pencilCase = (p: Practice) =>
  html`<div class="case" id="case" role="group" aria-label=${t('case.title')} data-t="pencils">
    <p class="quiet">${t('case.what')}</p>
    ${pencilChips(state.get().catalogue, {
      ...p.draft.lines,
      name: 'pencil',
      rules: known(p),
      choose,
    })}
  </div>`;

/** Puts others in; the address says which there are. */
function choose(also: string[]) {
  practice.choosePencils(also);
  const now = practice.get();
  if (now) history.replaceState(history.state, '', linesHash(now.draft.lines));
}
