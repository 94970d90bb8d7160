// The record sheet: four weeks, five short sessions each to tick, and a line for what was read.
import { h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import type { Options } from '../../print/options.ts';
import type { Catalogue } from '../../types.ts';
import { boxes, fit } from './fit.ts';
import { leaf, number } from './leaf.ts';

const WEEKS = 4,
  SESSIONS = 5;

/** Builds the sheet into box, which must be on screen, unscaled: its words are fitted there. */
export function record(c: Catalogue, o: Options, child: string, box: HTMLElement): HTMLElement[] {
  const tick = () => h('span', { class: 'tick' }),
    blank = (label: string, cls = '') =>
      h('span', { class: `fill-in ${cls}` }, label, h('span', { class: 'blank' }));
  const session = () =>
    h(
      'li',
      {},
      tick(),
      blank(t('print.day'), 'short'),
      blank(t('print.read'), 'long'),
      blank(t('print.rule')),
      h(
        'span',
        { class: 'went' },
        (['alone', 'some', 'much'] as const).map((x) =>
          h('span', {}, tick(), t(`print.went.${x}`)),
        ),
      ),
    );
  const week = (n: number) =>
    h(
      'section',
      { class: 'week-block' },
      h('h3', {}, t('print.week', { n }), blank(t('print.from'), 'short')),
      h('ol', {}, Array.from({ length: SESSIONS }, session)),
    );
  const leaves = [
    leaf(
      c,
      'record',
      1,
      h(
        'header',
        { class: 'leaf-head' },
        h(
          'div',
          { class: 'head-line' },
          h('h2', {}, t('print.kind.record')),
          h(
            'span',
            { class: 'fill-in' },
            t('print.name'),
            h('span', { class: 'blank' }, o.name ? child : ''),
          ),
        ),
      ),
      h(
        'div',
        { class: 'weeks' },
        Array.from({ length: WEEKS }, (_, i) => week(i + 1)),
      ),
    ),
  ];
  number(leaves);
  box.append(...leaves);
  fit(leaves, boxes(leaves, '.weeks, .week-block, .weeks ol, .weeks li, .weeks h3, .fill-in'));
  return leaves;
}
