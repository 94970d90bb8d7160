// The ladder: every rule in order, how far the learner is with it, and what it needs first.
import * as state from '../../state.ts';
import * as store from '../../store/store.ts';
import { ar, h, refill } from '../../dom.ts';
import { join, t } from '../../i18n.ts';
import { keep } from '../../log/log.ts';
import { today } from '../../log/week.ts';
import { DAYS, days, missing, order, type Step, step } from '../../plan/ladder.ts';
import { next } from '../../plan/today.ts';
import type { Rule } from '../../types.ts';
import { lessonPath } from '../lesson.ts';
import { type View, when } from '../view.ts';

export function rules(): View {
  const node = h('main', { class: 'rules' });
  const update = when(state.records, () => {
    const s = state.get(), l = state.learner(), ladder = order(s.catalogue);
    const n = l && next(s.catalogue, l, s.sessions, s.taught), at = n && 'rule' in n ? n.rule.id : '';
    const known = l ? ladder.filter((r) => step(r.id, state.taughtOf(l.id), state.sessionsOf(l.id)) === 'known').length : 0;
    const open = node.querySelector('details[open]')?.getAttribute('data-t');
    refill(node, h('h1', { tabindex: '-1' }, t('nav.rules')), h('p', { class: 'quiet' }, t('rules.known', { n: known, of: ladder.length })),
      h('ol', { class: 'ladder' }, ladder.map((r) => rung(r, r.id === at, open))));
  });
  return { node, title: t('nav.rules'), update };
}

function rung(r: Rule, current: boolean, open: string | null | undefined): HTMLElement {
  const s = state.get(), l = state.learner();
  const how: Step = l ? step(r.id, state.taughtOf(l.id), state.sessionsOf(l.id)) : 'not-yet', key = `rule-${r.id}`;
  const names = (ids: string[]) => join(ids.map((id) => s.catalogue.rules.find((x) => x.id === id)?.name ?? id));
  const lack = l ? missing(r, state.taughtOf(l.id)) : [];
  return h('li', { class: how, style: `--pencil:var(--c-${r.family});--form:var(--form-${r.family},solid)` },
    h('details', { 'data-t': key, open: open === key, name: 'rung' },
      h('summary', {}, h('span', { class: 'rung-name' }, h('span', { class: 'inked' }, r.name), ' ', ar(r.ar, 'ar small')),
        h('span', { class: 'state' }, t(`step.${how}`), current && how === 'not-yet' ? ` · ${t('step.next')}` : '')),
      h('p', {}, r.short),
      r.needs.length > 0 && h('p', { class: 'quiet' }, t(lack.length ? 'rules.needs-first' : 'rules.needs', { rules: names(lack.length ? lack : r.needs) })),
      how === 'learning' && l && h('p', { class: 'quiet' }, t('rules.days', { n: days(r.id, state.sessionsOf(l.id)), of: DAYS })),
      h('div', { class: 'row' },
        r.lesson && h('a', { class: 'button plain', href: lessonPath(r.lesson) }, t('rules.lesson')),
        h('a', { class: 'button plain', href: `#/lines?pick=${r.id}`, 'data-t': `lines-${r.id}` }, t('rules.lines'))),
      l && h('div', { class: 'row choice', role: 'group', 'aria-label': t('rules.state') }, (['not-yet', 'learning', 'known'] as Step[]).map((x) => h('button', {
        class: 'chip', 'data-t': `${r.id}-${x}`, 'aria-pressed': String(x === how), onclick: () => void setStep(l.id, r.id, x),
      }, t(`step.${x}`))))));
}

/** The adult decides: what they say of a rule is kept with today's date. */
async function setStep(learner: string, rule: string, to: Step) {
  const old = state.taughtOf(learner).find((x) => x.rule === rule), since = old?.since ?? today();
  await keep(() => (to === 'not-yet' ? store.dropTaught(learner, rule)
    : store.saveTaught({ learner, rule, since, known: to === 'known' ? today() : '' })));
}
