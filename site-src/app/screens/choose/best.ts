// The best lines for a rule, with the figures that speak for them.
import { html } from 'lit-html';
import { t } from '../../i18n.ts';
import type { Child } from '../../plan/child.ts';
import { part } from '../../plan/places.ts';
import type { Passage, Ranking } from '../../plan/rank.ts';
import type { Query } from '../../plan/score.ts';
import { explain, reach } from '../../plan/words.ts';
import { giveHash, linesHash } from '../../share/link.ts';
import * as state from '../../state.ts';
import { linesName } from '../../text/names.ts';
import { called } from '../parts/words.ts';
import type { Best } from './choice.ts';

/** How many are shown. */
const SHOWN = 6;

/** Where to look: near the place, a juz (j30) or a surah (s78), as the value of the field. */
export function within(c: Child, where: string): Partial<Query> {
  const { x, c: cat } = c.course;
  const n = Number(where.slice(1));
  if (where.startsWith('j')) {
    const [from, to] = part(x, cat.juz, n);
    return { from, to };
  }
  return where.startsWith('s') ? { from: x.surahs[n - 1]!, to: x.surahs[n]! - 1 } : {};
}

/** The ranking for a rule by its index, -1 for reading alone. */
export function find(c: Child, rule: number, where: string): Ranking {
  const plan = rule < 0 ? { ...c.today, unit: -1, rule: -1 } : c.practise(rule);
  return c.lines(plan, { best: SHOWN, ...within(c, where) });
}

export function results(best: Best) {
  const { ranking } = best;
  const weighed = [t('best.weighed', { n: ranking.seen }), reach(ranking)];
  return html`
    <p class="quiet" data-t="weighed">${weighed.filter(Boolean).join(' ')}</p>
    <ol class="plan-best">
      ${ranking.passages.map((p, i) => result(best, p, i))}
    </ol>
  `;
}

function result({ child, rule }: Best, p: Passage, i: number) {
  const { c: cat } = child.course;
  const lines = child.toLines(p, cat.rules[rule]?.id ?? '');
  const [first, ...others] = explain(child, p, rule, called(state.learner()));
  return html`
    <li class="card" data-t="best-${i + 1}">
      <h3>
        ${linesName(cat.surahs, lines.from, lines.to)}<span class="quiet"
          >${` · ${t('best.words', { n: p.words })}`}</span
        >
      </h3>
      <p>${first}</p>
      <details class="plan-why opens" ?open=${i === 0}>
        <summary>${t('plan.because')}</summary>
        <ul>
          ${others.map((x) => html`<li>${x}</li>`)}
        </ul>
      </details>
      <div class="row">
        <a class="button big" href=${linesHash(lines)} data-t="open-${i + 1}"
          >${t('choose.open')}</a
        >
        <a class="button plain" href=${giveHash(lines)} data-t="give-${i + 1}"
          >${t('choose.give')}</a
        >
      </div>
    </li>
  `;
}

/** The field for where to look. */
export function whereField(id: string, now: string, change: (where: string) => void) {
  const { juz, surahs } = state.get().catalogue;
  const option = (value: string, text: string) =>
    html`<option value=${value} .selected=${value === now}>${text}</option>`;
  return html`
    <select
      id=${id}
      data-t=${id}
      @change=${(e: Event) => change((e.target as HTMLSelectElement).value)}
    >
      ${option('', t('best.near'))}
      <optgroup label=${t('best.juz')}>
        ${juz.map((_, i) => option(`j${i + 1}`, t('next.juz', { n: i + 1 })))}
      </optgroup>
      <optgroup label=${t('field.surah')}>
        ${surahs.map((s) => option(`s${s.n}`, `${s.n}. ${s.la}`))}
      </optgroup>
    </select>
  `;
}
