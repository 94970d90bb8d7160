// Choose lines: a rule, then the best lines for it, or a surah and verses. A link that could not be
// read comes here too, with the reason.
import * as state from '../../state.ts';
import { whenCalm } from '../../calm.ts';
import { h } from '../../dom.ts';
import { type Key, t } from '../../i18n.ts';
import { order } from '../../plan/ladder.ts';
import { loadCourse as load, reader as look } from '../../planner.ts';
import { linesHash, MOST } from '../../share/link.ts';
import type { Route } from '../../types.ts';
import type { View } from '../view.ts';
import { find, results, whereField } from './best.ts';
import { surahSelect } from './fields.ts';

/** The screen; wrong says what could not be read, pick is a rule already chosen. */
export function choose(wrong?: Extract<Route, { name: 'bad' }>, pick = ''): View {
  const c = state.get().catalogue,
    at = state.learner()?.place ?? { s: c.juz[29]?.[0] ?? 78, a: 1 };
  const number = (id: string, value: number) =>
    h('input', {
      id,
      type: 'number',
      inputmode: 'numeric',
      min: 1,
      value,
      required: true,
      'data-t': id,
    });
  const rule = h(
    'select',
    { id: 'rule', 'data-t': 'rule', onchange: () => void suggest() },
    h('option', { value: '' }, t('choose.no-rule')),
    order(c).map((r) => h('option', { value: r.id, selected: r.id === pick }, r.name)),
  );
  const count = () => c.surahs[Number(surah.value) - 1]!.count;
  const surah = surahSelect('surah', at.s, () => {
    from.value = '1';
    to.value = String(Math.min(5, count()));
    fit();
  });
  const from = number('from', at.a),
    to = number('to', Math.min(at.a + 4, c.surahs[at.s - 1]!.count)),
    problem = h('p', { class: 'problem', role: 'alert', 'data-t': 'problem' });
  const fit = () => {
    from.max = to.max = String(count());
  };
  fit();
  const open = (e: Event) => {
    e.preventDefault();
    const a = Number(from.value),
      b = Number(to.value),
      s = Number(surah.value);
    if (b < a) problem.textContent = t('bad.order', { from: a, to: b });
    else if (b - a >= MOST) problem.textContent = t('bad.many', { n: b - a + 1, most: MOST });
    else location.hash = linesHash({ rule: rule.value, from: { s, a }, to: { s, a: b } });
  };
  const found = h('p', { class: 'quiet', role: 'status', 'data-t': 'choose-found' });
  let asked = 0;
  const list = h(
    'section',
    { 'aria-live': 'polite', 'data-t': 'best' },
    h('p', { class: 'quiet' }, t('today.looking')),
  );
  const where = whereField('where', () => void suggest());
  /** Shows the best lines, and puts the verses of the best into the fields. */
  const suggest = async () => {
    const mine = ++asked;
    found.textContent = '';
    try {
      await load();
    } catch {
      whenCalm(() => list.replaceChildren(h('p', { class: 'quiet' }, t('today.no-lines'))));
      return;
    }
    const child = look()!,
      n = c.rules.findIndex((r) => r.id === rule.value),
      all = find(child, n, where.value),
      top = all.passages[0];
    whenCalm(() => list.replaceChildren(...results(child, all, n)));
    if (mine !== asked || !rule.value || !top) return; // verses chosen by hand since stay
    const b = child.toLines(top, rule.value);
    [surah.value, from.value, to.value] = [String(b.from.s), String(b.from.a), String(b.to.a)];
    fit();
    found.textContent = t('choose.found', { n: top.focus });
  };
  void suggest();
  if (wrong) problem.textContent = t(`bad.${wrong.reason}`, wrong.vars);
  const field = (label: Key, el: HTMLElement) =>
    h('div', {}, h('label', { for: el.id }, t(label)), el);
  const node = h(
    'main',
    { class: 'choose' },
    h('h1', { tabindex: '-1' }, t('choose.title')),
    h('div', { class: 'card' }, problem, field('field.rule', rule), field('best.where', where)),
    h('h2', {}, t('best.title')),
    list,
    h('h2', {}, t('choose.own')),
    h(
      'form',
      { class: 'card', onsubmit: open },
      field('field.surah', surah),
      h('div', { class: 'fields' }, field('field.from', from), field('field.to', to)),
      found,
      h('button', { class: 'main', 'data-t': 'open' }, t('choose.open')),
    ),
  );
  for (const el of [surah, from, to])
    el.addEventListener('input', () => {
      asked++;
      found.textContent = '';
    });
  return { node, title: t('choose.title'), update: () => undefined };
}
