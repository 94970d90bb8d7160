// Which rule next: what each rule would make readable in the lines the child is about to read, as
// bars.
import * as state from '../../state.ts';
import { h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { type Child, PAGES } from '../../plan/child.ts';
import { part } from '../../plan/load.ts';
import { next } from '../../plan/next.ts';
import { reason } from '../../plan/words.ts';

/** Bars shown. */
const MOST = 7;

/** The juz looked at; 0 for the next pages. */
let juz = 0;

export function nextRule(c: Child, redraw: () => void): HTMLElement | false {
  const { units, x, c: cat } = c.course,
    places = c.ahead(juz ? part(x, cat.juz, juz) : undefined);
  const all = next(units, places, c.taught),
    top = Math.max(1, ...all.map((o) => o.places));
  const proposed = c.reader.order.find((u) => all.some((o) => o.unit === u));
  if (proposed === undefined) return false;
  const list = all.slice(0, MOST);
  if (!list.some((o) => o.unit === proposed))
    list.splice(
      -1,
      1,
      all.find((o) => o.unit === proposed)!,
    );
  const where = h(
    'select',
    {
      id: 'ahead',
      'data-t': 'ahead',
      onchange: () => {
        juz = Number(where.value);
        redraw();
      },
    },
    h('option', { value: 0, selected: juz === 0 }, t('next.pages', { n: PAGES })),
    cat.juz.map((_, i) =>
      h('option', { value: i + 1, selected: juz === i + 1 }, t('next.juz', { n: i + 1 })),
    ),
  );
  const learning = c.reader.taught.find((b) => c.standing(b.unit).state === 'learning');
  return h(
    'section',
    { class: 'card', 'data-t': 'next' },
    h('h2', {}, t('next.title')),
    h(
      'p',
      {},
      h('b', {}, units[proposed]!.name),
      ': ',
      c.learner.order ? t('plan.your-order') : reason(cat, proposed),
    ),
    learning &&
      h(
        'p',
        { class: 'quiet', 'data-t': 'not-ready' },
        t('next.not-ready', { rule: units[learning.unit]!.name }),
      ),
    h('label', { for: 'ahead' }, t('next.where')),
    where,
    h(
      'ol',
      { class: 'plan-bars' },
      list.map((o) => {
        const u = units[o.unit]!;
        return h(
          'li',
          { style: `--pencil:var(--c-${u.family})` },
          h(
            'button',
            { 'data-t': `bar-${u.id}`, onclick: () => open(u.id) },
            h(
              'span',
              {},
              u.name,
              o.unit === proposed && h('span', { class: 'quiet' }, ` · ${t('next.proposed')}`),
            ),
            h(
              'span',
              { class: 'plan-bar', 'aria-hidden': 'true' },
              h('span', { style: `inline-size:${Math.round((100 * o.places) / top)}%` }),
            ),
            h('span', { class: 'plan-figure' }, t('today.places', { n: o.places })),
          ),
        );
      }),
    ),
    h('p', { class: 'quiet' }, t('next.what', { child: state.learner()?.name || t('child') })),
  );
}

/** Opens the rung of a lesson and brings it into view. */
function open(id: string) {
  const d = document.querySelector<HTMLDetailsElement>(`[data-t="rung-${id}"]`);
  if (!d) return;
  d.open = true;
  d.scrollIntoView({
    block: 'center',
    behavior: matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth',
  });
  d.querySelector('summary')!.focus({ preventScroll: true });
}
