// What can be chosen for a booklet.
import { html, nothing } from 'lit-html';
import { t } from '../../../i18n.ts';
import { ANSWERS, LAYS, LEAST, MOST_POINTS, usualSize } from '../../../paper/booklet.ts';
import { added } from '../../../paper/leaves.ts';
import { learnt } from '../../../paper/learnt.ts';
import { type Options, STEP } from '../../../paper/options.ts';
import { rulesInOrder } from '../../../plan/ladder.ts';
import * as state from '../../../state.ts';
import type { State } from '../../../state.ts';
import type { Rule } from '../../../types.ts';
import { pencilChip } from '../../parts/case.ts';
import { chips } from '../../parts/chips.ts';
import { numberField } from '../../parts/number.ts';
import { changeBooklet } from '../printing.ts';
import { sizeField } from '../size.ts';

export function bookletFields(s: State, { booklet: b }: Options) {
  const [answers, lay] = [t('print.answers-where'), t('print.lay')];
  return html`
    <div>
      <label for="booklet-juz">${t('print.juz')}</label>
      ${numberField({
        id: 'booklet-juz',
        least: 1,
        most: s.catalogue.juz.length,
        now: b.juz,
        usual: b.juz,
        choose: (juz) => changeBooklet({ juz }),
      })}
    </div>
    ${rulesField(s, b)}
    ${chips(
      answers,
      'answers',
      ANSWERS,
      b.answers,
      (x) => t(`print.answers-where.${x}`),
      (x) => changeBooklet({ answers: x }),
    )}
    ${chips(
      lay,
      'lay',
      LAYS,
      b.lay,
      (x) => t(`print.lay.${x}`),
      (x) => changeBooklet({ lay: x, size: usualSize(x) }),
    )}
    ${layHow(s)} ${sizeField(b.size, LEAST, MOST_POINTS, STEP, (size) => changeBooklet({ size }))}
  `;
}

/** More sheets than these hardly fold together (common practice, no source). */
const THICK = 16;

/** How pages that stand in twos are printed, and what their number asks for. */
function layHow({ printing }: State) {
  const { lay } = printing!.options.booklet;
  if (lay === 'one') return nothing;
  const l = printing!.layout;
  const there = !printing!.busy && l?.sheet === 'booklet' && l.options.booklet.lay === lay;
  const n = there ? added(l.leaves) : 0;
  const thick = there && lay === 'fold' && l.sides.length / 2 > THICK;
  return html`<p class="quiet" data-t="lay-how">
    ${t(`print.lay-${lay}`)} ${n ? t('print.filled', { n }) : ''} ${thick ? t('print.thick') : ''}
  </p>`;
}

/** The rules that have a place in the juz; those learnt are chosen until others are. */
function rulesField(s: State, b: Options['booklet']) {
  const { catalogue: c, printing } = s;
  const l = printing?.layout;
  const totals = l?.sheet === 'booklet' && l.options.booklet.juz === b.juz ? l.totals : undefined;
  const reader = state.learner(s);
  const known = reader ? learnt(c, state.taughtOf(reader.id)).map((r) => r.id) : [];
  const chosen = new Set(b.rules ?? known);
  const order = rulesInOrder(c);
  const turn = (id: string) => {
    const rules = order.map((r) => r.id).filter((x) => (x === id) !== chosen.has(x));
    changeBooklet({ rules: rules.join() === known.join() ? undefined : rules });
  };
  const chip = (rule: Rule) => {
    const n = totals?.get(c.rules.indexOf(rule));
    const on = chosen.has(rule.id);
    if (!on && !n) return nothing;
    const name = n === undefined ? rule.name : t('print.key-rule', { rule: rule.name, n });
    return pencilChip(`find-${rule.id}`, name, rule.family, on, () => turn(rule.id));
  };
  return html`<details class="opens" data-t="booklet-rules">
    <summary>${t('print.key')}</summary>
    <div class="case" role="group" aria-label=${t('print.key')}>
      <div class="row">${order.map(chip)}</div>
      ${
        b.rules && known.length
          ? html`<div class="row">
              <button
                type="button"
                class="plain"
                data-t="booklet-learnt"
                data-next='[data-t="booklet-rules"] summary'
                @click=${() => changeBooklet({ rules: undefined })}
              >
                ${t('print.key-learnt')}
              </button>
            </div>`
          : nothing
      }
    </div>
  </details>`;
}
