// What can be chosen for a sheet. Each change is told at once; nothing is kept but the address.
import * as state from '../../state.ts';
import { h } from '../../dom.ts';
import { type Key, t } from '../../i18n.ts';
import { order } from '../../plan/ladder.ts';
import {
  KINDS,
  LARGEST,
  LEAST,
  number,
  type Options,
  PAPERS,
  SHOWS,
  STEP,
  TURNS,
} from '../../print/options.ts';
import { part, type Part, PARTS } from '../../print/passage.ts';
import { surahSelect } from '../choose/fields.ts';

export function form(o: Options, set: (patch: Partial<Options>) => void): HTMLElement[] {
  const c = state.get().catalogue,
    lines = o.kind !== 'card' && o.kind !== 'record',
    child = state.learner()?.name;
  const chips = <K extends 'kind' | 'show' | 'paper' | 'turn'>(
    key: K,
    list: readonly Options[K][],
    label: (x: Options[K]) => Key,
  ) =>
    h(
      'fieldset',
      { class: 'choice' },
      h('legend', {}, t(`print.${key}`)),
      h(
        'div',
        { class: 'row' },
        list.map((x) =>
          h(
            'button',
            {
              type: 'button',
              class: 'chip',
              'data-t': `${key}-${x}`,
              'aria-pressed': String(o[key] === x),
              onclick: () => set({ [key]: x } as Partial<Options>),
            },
            t(label(x)),
          ),
        ),
      ),
    );
  const field = (label: Key, el: HTMLElement) =>
    h('div', {}, h('label', { for: el.id }, t(label)), el);
  const rule = h(
    'select',
    {
      id: 'print-rule',
      'data-t': 'print-rule',
      onchange: () => set({ rule: rule.value, show: rule.value ? o.show : 'learnt' }),
    },
    h('option', { value: '' }, t('choose.no-rule')),
    order(c).map((r) => h('option', { value: r.id, selected: r.id === o.rule }, r.name)),
  );
  const size = h('input', {
    id: 'print-size',
    type: 'range',
    min: LEAST,
    max: LARGEST,
    step: STEP,
    value: o.size,
    'data-t': 'print-size',
    'aria-valuetext': t('print.points', { n: o.size }),
    oninput: () => set({ size: Number(size.value) }),
  });
  const name = h('input', {
    id: 'print-name',
    type: 'checkbox',
    checked: o.name,
    'data-t': 'print-name',
    onchange: () => set({ name: name.checked }),
  });
  return [
    chips('kind', KINDS, (x) => `print.kind.${x}`),
    ...(lines
      ? [
          place(o, set),
          field('print.rule-to-find', rule),
          ...(o.kind === 'practice'
            ? []
            : [chips('show', o.rule ? SHOWS : SHOWS.slice(1), (x) => `print.show.${x}`)]),
          h(
            'div',
            {},
            h(
              'label',
              { for: 'print-size' },
              t('print.size'),
              ' ',
              h('span', { class: 'quiet' }, t('print.points', { n: o.size })),
            ),
            size,
          ),
        ]
      : []),
    chips('paper', PAPERS, (x) => `print.paper.${x}`),
    chips('turn', TURNS, (x) => `print.turn.${x}`),
    ...(child
      ? [
          h(
            'div',
            { class: 'row check' },
            name,
            h('label', { for: 'print-name' }, t('print.with-name', { child })),
          ),
        ]
      : []),
  ];
}

/** Which lines: verses of a surah, or a surah, page or juz whole. */
function place(o: Options, set: (patch: Partial<Options>) => void): HTMLElement {
  const c = state.get().catalogue,
    field = (label: Key, el: HTMLElement) => h('div', {}, h('label', { for: el.id }, t(label)), el);
  const by = h(
    'select',
    {
      id: 'print-part',
      'data-t': 'print-part',
      onchange: () => {
        const to = by.value as Part,
          at = c.surahs[o.from.s - 1]!;
        if (to === 'verses')
          set({ part: to, to: { s: o.from.s, a: Math.min(at.count, o.from.a + 9) } });
        else
          set({
            part: to,
            ...part(
              c,
              to,
              to === 'surah' ? o.from.s : Math.max(1, partAt(to === 'juz' ? c.juz : c.pages, o)),
            )!,
          });
      },
    },
    PARTS.map((p) => h('option', { value: p, selected: p === o.part }, t(`print.part.${p}`))),
  );
  const count = (id: string, most: number, value: number, done: (n: number) => void) => {
    const el: HTMLInputElement = h('input', {
      id,
      type: 'number',
      inputmode: 'numeric',
      min: 1,
      max: most,
      value,
      'data-t': id,
      onchange: () => done(Math.min(most, Math.max(1, Math.round(Number(el.value)) || 1))),
    });
    return el;
  };
  const whole = (n: number) => set({ part: o.part, ...part(c, o.part, n)! });
  const surah = surahSelect('print-surah', o.from.s, () => {
    const s = Number(surah.value);
    if (o.part === 'surah') whole(s);
    else set({ from: { s, a: 1 }, to: { s, a: Math.min(10, c.surahs[s - 1]!.count) } });
  });
  const verse = (key: 'from' | 'to') =>
    count(`print-${key}`, c.surahs[o.from.s - 1]!.count, o[key].a, (a) => {
      const s = o.from.s,
        from = key === 'from' ? a : o.from.a,
        to = key === 'to' ? a : o.to.s === s ? o.to.a : a;
      // The one just typed stands; the other follows where they would cross.
      set({
        from: { s, a: key === 'to' ? Math.min(from, to) : from },
        to: { s, a: key === 'from' ? Math.max(from, to) : to },
      });
    });
  const more =
    o.part === 'verses'
      ? [
          field('field.surah', surah),
          field('field.from', verse('from')),
          field('field.to', verse('to')),
        ]
      : o.part === 'surah'
        ? [field('field.surah', surah)]
        : [
            field(
              `print.part.${o.part}`,
              count(
                `print-${o.part}`,
                (o.part === 'juz' ? c.juz : c.pages).length,
                number(c, o) || 1,
                whole,
              ),
            ),
          ];
  return h('div', { class: 'fields place' }, field('print.part', by), more);
}

/** The last part that begins at or before the first verse, from 1. */
const partAt = (list: [number, number][], o: Options) =>
  list.filter(([s, a]) => s < o.from.s || (s === o.from.s && a <= o.from.a)).length;
