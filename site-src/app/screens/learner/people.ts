// Who is learning: choose, rename, add, remove.
import * as state from '../../state.ts';
import * as store from '../../store/store.ts';
import { h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { keep } from '../../actions/keep.ts';
import type { Learner } from '../../types.ts';
import { add } from '../today/first.ts';

export function people(): HTMLElement {
  const s = state.get(),
    now = state.learner();
  if (!now)
    return h(
      'section',
      { class: 'card' },
      h('p', {}, t('people.none')),
      h('a', { class: 'button main', href: '#/today' }, t('nav.today')),
    );
  const name = h('input', {
    id: 'nickname',
    value: now.name,
    maxlength: 40,
    autocomplete: 'off',
    placeholder: t('child'),
    'data-t': 'nickname',
    onchange: () => void rename(now, name.value),
  });
  return h(
    'section',
    { class: 'card' },
    s.learners.length > 1 &&
      h(
        'fieldset',
        { class: 'choice' },
        h('legend', {}, t('people.who')),
        h(
          'div',
          { class: 'row' },
          s.learners.map((l) =>
            h(
              'button',
              {
                class: 'chip',
                'data-t': `learner-${l.id}`,
                'aria-pressed': String(l.id === now.id),
                onclick: () => choose(l.id),
              },
              l.name || t('child'),
            ),
          ),
        ),
      ),
    h('label', { for: 'nickname' }, t('people.name')),
    name,
    h(
      'div',
      { class: 'row' },
      h(
        'button',
        {
          class: 'plain',
          'data-t': 'add-learner',
          onclick: () => void add('').then(() => document.getElementById('nickname')?.focus()),
        },
        t('people.add'),
      ),
      h(
        'button',
        { class: 'plain', 'data-t': 'remove-learner', onclick: () => ask(now) },
        t('people.remove'),
      ),
    ),
  );
}

function choose(id: string) {
  const settings = { ...state.get().settings, learner: id };
  state.set({ settings });
  void keep(() => store.changeSettings({ learner: id }));
}

const rename = (l: Learner, name: string) =>
  keep(() => store.changeLearner(l.id, { name: name.trim().slice(0, 40) }));

/** Asks before everything of a learner goes. */
function ask(l: Learner) {
  const box: HTMLDialogElement = h(
    'dialog',
    { 'data-t': 'confirm' },
    h('p', {}, t('people.sure', { child: l.name || t('child'), n: state.sessionsOf(l.id).length })),
    h(
      'div',
      { class: 'row' },
      h('button', { class: 'big', 'data-t': 'keep', onclick: () => box.close() }, t('people.keep')),
      h(
        'button',
        {
          class: 'plain',
          'data-t': 'confirm-remove',
          onclick: () => {
            box.close();
            void keep(() => store.removeLearner(l.id));
          },
        },
        t('people.remove'),
      ),
    ),
  );
  box.addEventListener('close', () => box.remove());
  document.body.append(box);
  box.showModal();
}
