// What an answer sheet adds up to: a line a rule, with its colour, form and short name, which is
// the key to the letters' labels.
import { pencil, swatch } from '../../colour/ink.ts';
import { ar, h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import type { Marks } from '../../print/marks.ts';
import type { Catalogue } from '../../types.ts';

export function totals(c: Catalogue, m: Marks, keys: Map<number, string>): HTMLElement {
  const list = [...m.totals].filter(([, n]) => n > 0 || m.totals.size === 1);
  return h(
    'section',
    { class: 'totals' },
    h('h3', {}, t('print.totals')),
    list.length
      ? h(
          'ul',
          {},
          list.map(([r, n]) => {
            const rule = c.rules[r]!;
            return h(
              'li',
              { 'data-rule': rule.id, 'data-n': n, style: pencil(rule.family) },
              keys.has(r) && h('b', { class: 'key-name' }, keys.get(r)),
              h('span', { class: 'inked' }, swatch(rule.family), rule.name),
              ' ',
              ar(rule.ar, 'ar'),
              h('span', { class: 'total' }, String(n)),
            );
          }),
        )
      : h('p', {}, t('print.no-rules')),
    h('p', { class: 'said-once' }, t('print.stops'), ' ', t('caution')),
  );
}
