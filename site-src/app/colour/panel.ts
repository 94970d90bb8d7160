// Where a family sets its own pencils, and is told when two are hard to tell apart.
import * as state from '../state.ts';
import { whenCalm } from '../calm.ts';
import * as store from '../store/store.ts';
import { h, refill } from '../dom.ts';
import { type Key, t } from '../i18n.ts';
import { keep } from '../actions/keep.ts';
import { pencil, swatch } from './ink.ts';
import { apply, onPaper, type Pencils, type Trouble, troubles } from './pencils.ts';

const name = (id: string) => t(`pencils.family.${id}` as Key);

function words(x: Trouble): string {
  if (x.kind !== 'pair') return t(`pencils.${x.kind}`, { a: name(x.a) });
  const eyes = x.which === 'full colour' ? 'pencils.alike' : 'pencils.alike-for';
  return `${t(eyes, { a: name(x.a), b: name(x.b), which: t(`pencils.${x.which}`) })} ${t(x.sameForm ? 'pencils.same-line' : 'pencils.other-line')}`;
}

/** The list of pencils. */
export function panel(): HTMLElement {
  const c = state.get().catalogue,
    said = h('div', { class: 'pencil-said', role: 'status', 'data-t': 'pencil-said' }),
    list = h('ul', { class: 'pencil-list' });
  const again = h(
    'button',
    { type: 'button', class: 'plain', 'data-t': 'pencils-usual', onclick: () => set({}) },
    t('pencils.usual'),
  );
  const own = () => state.get().settings.pencils ?? {};

  function set(pencils: Pencils) {
    const at = document.activeElement?.id;
    const settings = { ...state.get().settings, pencils };
    state.set({ settings });
    apply(c, pencils);
    void keep(() => store.changeSettings({ pencils }));
    whenCalm(draw);
    // The screen around may have been drawn anew; the keyboard stays where it was.
    if (at)
      requestAnimationFrame(() => document.getElementById(at)?.focus({ preventScroll: true }));
  }

  function draw() {
    const colours = onPaper(c.families, own());
    refill(
      list,
      c.families.map((f) => {
        const input = h('input', {
          type: 'color',
          id: `pencil-${f.id}`,
          value: colours.get(f.id)!,
          'data-t': `pencil-${f.id}`,
          onchange: () => set({ ...own(), [f.id]: input.value }),
        });
        const back = () => {
          const { [f.id]: _, ...rest } = own();
          set(rest);
        };
        return h(
          'li',
          { style: pencil(f.id) },
          input,
          h('label', { for: input.id }, h('span', { class: 'inked' }, swatch(f.id), name(f.id))),
          own()[f.id] !== undefined &&
            h(
              'button',
              {
                type: 'button',
                class: 'plain',
                'data-t': `pencil-back-${f.id}`,
                'aria-label': t('pencils.usual-of', { a: name(f.id) }),
                onclick: back,
              },
              t('pencils.back'),
            ),
        );
      }),
    );
    const told = troubles(c, own());
    refill(
      said,
      told.length > 0 &&
        h(
          'ul',
          {},
          told.map((x) => h('li', {}, words(x))),
        ),
    );
    again.hidden = Object.keys(own()).length < 2;
  }
  draw();
  return h(
    'section',
    { class: 'pencils' },
    h('h2', {}, t('pencils.title')),
    h('p', { class: 'quiet' }, t('pencils.what')),
    list,
    said,
    again,
  );
}
