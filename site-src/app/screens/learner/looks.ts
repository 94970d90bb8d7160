// How the lines look, and the counts on which teachers differ.
import * as state from '../../state.ts';
import { whenCalm } from '../../calm.ts';
import * as store from '../../store/store.ts';
import { h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { keep } from '../../actions/keep.ts';
import { choices } from '../../text/counts.ts';
import { verses } from '../../text/data.ts';
import type { Settings } from '../../types.ts';

let sample = '';

export function looks(): HTMLElement {
  const s = state.get().settings,
    { rules } = state.get().catalogue;
  const save = (patch: Partial<Settings>) => {
    const settings = { ...state.get().settings, ...patch };
    state.set({ settings });
    void keep(() => store.changeSettings(patch));
  };
  const slide = (key: 'size' | 'spacing', min: number, max: number) => {
    const el = h('input', {
      id: key,
      type: 'range',
      min,
      max,
      step: 0.1,
      value: s[key],
      'data-t': key,
      oninput: () => save({ [key]: Number(el.value) }),
    });
    return [h('label', { for: key }, t(`looks.${key}`)), el];
  };
  const pick = <K extends 'theme' | 'madd' | 'arid'>(key: K, values: Settings[K][]) =>
    h(
      'fieldset',
      { class: 'choice' },
      h('legend', {}, t(`looks.${key}`)),
      h(
        'div',
        { class: 'row' },
        values.map((v) =>
          h(
            'button',
            {
              class: 'chip',
              'data-t': `${key}-${v}`,
              'aria-pressed': String(s[key] === v),
              onclick: () => save({ [key]: v } as Partial<Settings>),
            },
            typeof v === 'number' ? String(v) : t(`looks.theme.${v as Settings['theme']}`),
          ),
        ),
      ),
    );
  return h(
    'section',
    { class: 'card looks' },
    h('h2', {}, t('looks.title')),
    slide('size', 0.7, 1.8),
    slide('spacing', 0.4, 2.5),
    preview(),
    pick('theme', ['auto', 'light', 'dark']),
    h('h2', {}, t('looks.counts')),
    h('p', { class: 'quiet' }, t('looks.counts-what')),
    pick('madd', choices(rules, 'madd')),
    pick('arid', choices(rules, 'arid')),
  );
}

/** The first verse of all, so that size and spacing are seen as they change. */
function preview(): HTMLElement {
  const p = h('p', { class: 'text preview', lang: 'ar', dir: 'rtl' }, sample);
  if (!sample) {
    verses(state.get().catalogue, { s: 1, a: 1 }, { s: 1, a: 1 })
      .then(([v]) => {
        sample = v?.text ?? '';
        whenCalm(() => document.querySelector('.preview')?.replaceChildren(sample));
      })
      .catch(() => whenCalm(() => p.remove()));
  }
  return p;
}
