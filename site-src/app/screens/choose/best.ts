// The best lines for a rule, with the figures that speak for them.
import * as state from '../../state.ts';
import { h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import type { Child } from '../../plan/child.ts';
import { part } from '../../plan/places.ts';
import { explain, reach } from '../../plan/words.ts';
import type { Query } from '../../plan/score.ts';
import { linesHash } from '../../share/link.ts';
import { linesName } from '../../text/names.ts';
import type { Ranking } from '../../plan/rank.ts';

/** How many are shown. */
const SHOWN = 6;

/** Where to look: near the place, a juz (j30) or a surah (s78), as the value of the field. */
export function within(c: Child, where: string): Partial<Query> {
  const { x, c: cat } = c.course,
    n = Number(where.slice(1));
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

export function results(c: Child, r: Ranking, rule: number): HTMLElement[] {
  const { c: cat } = c.course,
    id = rule < 0 ? '' : cat.rules[rule]!.id,
    name = state.learner()?.name || t('child');
  return [
    h(
      'p',
      { class: 'quiet', 'data-t': 'weighed' },
      [t('best.weighed', { n: r.seen }), reach(r)].filter(Boolean).join(' '),
    ),
    h(
      'ol',
      { class: 'plan-best' },
      r.passages.map((p, i) => {
        const lines = c.toLines(p, id),
          words = explain(c, p, rule, name);
        return h(
          'li',
          { class: 'card', 'data-t': `best-${i + 1}` },
          h(
            'h3',
            {},
            linesName(cat.surahs, lines.from, lines.to),
            h('span', { class: 'quiet' }, ` · ${t('best.words', { n: p.words })}`),
          ),
          h('p', {}, words[0]),
          h(
            'details',
            { class: 'plan-why opens', open: i === 0 },
            h('summary', {}, t('plan.because')),
            h(
              'ul',
              {},
              words.slice(1).map((x) => h('li', {}, x)),
            ),
          ),
          h(
            'a',
            { class: 'button big', href: linesHash(lines), 'data-t': `open-${i + 1}` },
            t('choose.open'),
          ),
        );
      }),
    ),
  ];
}

/** The field for where to look. */
export function whereField(id: string, onchange: () => void): HTMLSelectElement {
  const cat = state.get().catalogue;
  return h(
    'select',
    { id, 'data-t': id, onchange },
    h('option', { value: '' }, t('best.near')),
    h(
      'optgroup',
      { label: t('best.juz') },
      cat.juz.map((_, i) => h('option', { value: `j${i + 1}` }, t('next.juz', { n: i + 1 }))),
    ),
    h(
      'optgroup',
      { label: t('field.surah') },
      cat.surahs.map((s) => h('option', { value: `s${s.n}` }, `${s.n}. ${s.la}`)),
    ),
  );
}
