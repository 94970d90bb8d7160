// The first time: whom we read with. The name may stay empty, and never leaves the device.
import * as state from '../../state.ts';
import * as store from '../../store/store.ts';
import { h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { keep } from '../../actions/keep.ts';
import { newId } from '../../store/id.ts';
import type { Learner } from '../../types.ts';

/** A learner who starts with the last thirtieth of the text. */
export function newLearner(name: string): Learner {
  const now = new Date().toISOString(),
    [s, a] = state.get().catalogue.juz[29] ?? [78, 1];
  return {
    id: newId(),
    name: name.trim().slice(0, 40),
    place: { s, a },
    settled: false,
    made: now,
    updated: now,
  };
}

/** Keeps a new learner and takes it in hand. */
export async function add(name: string) {
  const l = newLearner(name);
  if (!(await keep(() => store.addLearner(l)))) return;
  state.set({ settings: { ...state.get().settings, learner: l.id } });
  await keep(() => store.changeSettings({ learner: l.id }));
  void store.persist();
}

export function first(): HTMLElement {
  const name = h('input', {
    id: 'name',
    name: 'name',
    maxlength: 40,
    autocomplete: 'off',
    placeholder: t('child'),
    'data-t': 'name',
  });
  return h(
    'form',
    {
      class: 'first',
      'data-t': 'first',
      onsubmit: (e: Event) => {
        e.preventDefault();
        void add(name.value);
      },
    },
    h('h1', { tabindex: '-1' }, t('first.title')),
    h('p', {}, t('first.what')),
    h(
      'section',
      { class: 'card' },
      h('label', { for: 'name' }, t('first.name')),
      name,
      h('p', { class: 'quiet' }, t('first.private')),
      h('button', { class: 'main', 'data-t': 'begin' }, t('first.begin')),
      h('p', { class: 'quiet' }, t('first.place')),
    ),
    h('p', { class: 'quiet' }, t('caution'), ' ', h('a', { href: 'about.html' }, t('nav.about'))),
  );
}
