// The ladder: what comes next and why; every lesson in order with how far the learner is; what
// makes a rule known.
import * as state from '../../state.ts';
import { whenCalm } from '../../calm.ts';
import { h, renew } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { load, look } from '../../plan/held.ts';
import { type View, when } from '../view.ts';
import { criterion } from './criterion.ts';
import { nextRule } from './next.ts';
import { rung } from './rung.ts';

export function rules(): View {
  const node = h('main', { class: 'rules' });
  const draw = (failed?: unknown) => {
    const open = new Set(
      [...node.querySelectorAll('details[data-t][open]')].map((d) => d.getAttribute('data-t')!),
    );
    const c = look(),
      head = h('h1', { tabindex: '-1' }, t('nav.rules'));
    if (!c) {
      renew(node, head, h('p', { role: 'status' }, t(failed ? 'today.no-lines' : 'rules.looking')));
      return;
    }
    const standings = c.reader.order.map((u) => c.standing(u)),
      known = standings.filter((s) => s.known >= 0).length;
    const next = c.reader.order.find((u) => !c.taught[u]);
    renew(
      node,
      head,
      h(
        'p',
        { class: 'quiet', 'data-t': 'count' },
        t('rules.known', { n: known, of: standings.length }),
      ),
      state.learner() && nextRule(c, () => draw()),
      h(
        'ol',
        { class: 'ladder' },
        standings.map((s, i) => rung(c, s, i, open, s.unit === next)),
      ),
      state.learner() && criterion(c, open),
    );
  };
  const update = when(state.records, draw);
  if (!look())
    load().then(
      () => whenCalm(draw),
      () => whenCalm(() => draw(true)),
    );
  return { node, title: t('nav.rules'), update };
}
