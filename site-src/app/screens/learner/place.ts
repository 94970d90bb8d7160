// Where the learner is in the text.
import * as state from '../../state.ts';
import * as store from '../../store/store.ts';
import { h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { keep } from '../../actions/keep.ts';
import type { Learner } from '../../types.ts';
import { surahSelect } from '../choose/fields.ts';

export function place(l: Learner): HTMLElement {
  const save = (s: number, a: number) => {
    const most = state.get().catalogue.surahs[s - 1]!.count,
      to = { s, a: Math.min(Math.max(1, a || 1), most) };
    void keep(() => store.changeLearner(l.id, { place: to }));
  };
  const surah = surahSelect('place-surah', l.place.s, () => save(Number(surah.value), 1));
  const verse = h('input', {
    id: 'place-verse',
    type: 'number',
    inputmode: 'numeric',
    min: 1,
    max: state.get().catalogue.surahs[l.place.s - 1]!.count,
    value: l.place.a,
    'data-t': 'place-verse',
    onchange: () => save(l.place.s, Number(verse.value)),
  });
  return h(
    'section',
    { class: 'card' },
    h('h2', {}, t('place.title')),
    h('p', { class: 'quiet' }, t('place.what')),
    h(
      'div',
      { class: 'fields' },
      h('div', {}, h('label', { for: 'place-surah' }, t('field.surah')), surah),
      h('div', {}, h('label', { for: 'place-verse' }, t('field.verse')), verse),
    ),
  );
}
