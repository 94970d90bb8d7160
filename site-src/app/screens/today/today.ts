// Today: one card with the next thing and one line why; below it the week, small.
import * as state from '../../state.ts';
import { h, refill } from '../../dom.ts';
import { t, weekday } from '../../i18n.ts';
import { keep } from '../../log/log.ts';
import { week } from '../../log/week.ts';
import { choose } from '../../plan/lines.ts';
import { type Next, next } from '../../plan/today.ts';
import { linesHash } from '../../share/link.ts';
import { draft, saveLearner } from '../../store/store.ts';
import { prefetch, verses } from '../../text/data.ts';
import { linesName } from '../../text/names.ts';
import type { Learner } from '../../types.ts';
import { lessonPath } from '../lesson.ts';
import { type View, when } from '../view.ts';
import { first } from './first.ts';

export function today(): View {
  const node = h('main', { class: 'today' });
  const update = when(state.records, () => {
    const l = state.learner();
    const begun = !!node.querySelector('form');
    if (!l) refill(node, first());
    else refill(node, h('h1', { tabindex: '-1' }, t('today.title', { child: l.name || t('child') })), card(l), days(l));
    if (begun && l) node.querySelector('h1')?.focus({ preventScroll: true });
  });
  return { node, title: t('nav.today'), update };
}

function card(l: Learner): HTMLElement {
  const s = state.get(), n = next(s.catalogue, l, s.sessions, s.taught), child = l.name || t('child');
  const rule = 'rule' in n ? n.rule : undefined, box = h('section', { class: 'card', 'data-t': `next-${n.do}` });
  const open = h('a', { class: 'button main', href: '#/lines', 'data-t': 'start' }, t(`today.button.${n.do === 'teach' && !rule?.lesson ? 'practise' : n.do}`));
  const where = h('p', { class: 'quiet', 'data-t': 'where' }, t('today.looking'));
  box.append(
    h('h2', rule ? { style: `--pencil:var(--c-${rule.family});--form:var(--form-${rule.family},solid)`, class: 'inked' } : {},
      t(`today.card.${n.do}`, { rule: rule?.name ?? '', child })),
    h('p', { 'data-t': 'why' }, why(n, child)),
  );
  if (n.do === 'teach' && rule?.lesson) {
    open.href = lessonPath(rule.lesson);
    box.append(open, h('p', {}, h('a', { href: '#/lines', 'data-t': 'start-lines' }, t('today.after-lesson'))), where);
  } else box.append(open, where);
  if (n.do === 'settle') box.append(h('p', {}, h('button', { class: 'link', 'data-t': 'settled', onclick: () => void settle(l) }, t('today.settled'))));
  void place(l, rule?.id ?? '', box, where);
  void resume(l, box);
  return box;
}

/** Finds the lines, and fetches them, while the card is being read: the button then opens them at once. */
async function place(l: Learner, rule: string, box: HTMLElement, where: HTMLElement) {
  const c = state.get().catalogue;
  try {
    const lines = await choose(c, l.place, rule, (s) => verses(c, { s, a: 1 }, { s, a: c.surahs[s - 1]!.count }));
    box.querySelectorAll<HTMLAnchorElement>('[data-t=start],[data-t=start-lines]').forEach((a) => {
      if (a.getAttribute('href') === '#/lines') a.href = linesHash(lines);
    });
    where.textContent = linesName(c.surahs, lines.from, lines.to) + (rule ? ` · ${t('today.places', { n: lines.n })}` : '');
    prefetch(c, lines);
  } catch {
    where.textContent = t('today.no-lines');
  }
}

/** Lines left half marked can be taken up again. */
async function resume(l: Learner, box: HTMLElement) {
  const d = await draft(l.id).catch(() => undefined), { surahs } = state.get().catalogue;
  if (!d?.marks.length || d.phase === 'done' || !surahs[d.lines.to.s - 1]) return;
  box.append(h('p', {}, h('a', { href: linesHash(d.lines), 'data-t': 'resume' }, t('today.resume', { lines: linesName(surahs, d.lines.from, d.lines.to) }))));
}

async function settle(l: Learner) {
  await keep(() => saveLearner({ ...l, settled: true, updated: new Date().toISOString() }));
}

function why(n: Next, child: string): string {
  if (n.do === 'settle') return t('today.why.settle', { n: n.left, child });
  if (n.do === 'practise') return t(n.days ? 'today.why.practise' : 'today.why.practise-first', { n: n.days, of: n.of, child });
  if (n.do === 'teach') return n.after ? t('today.why.teach', { after: n.after.name, rule: n.rule.name }) : t('today.why.teach-first', { child });
  return t('today.why.read', { child });
}

function days(l: Learner): HTMLElement {
  const all = week(state.sessionsOf(l.id)), n = all.reduce((x, d) => x + d.n, 0);
  return h('section', { class: 'week', 'aria-label': t('week.title'), 'data-t': 'week' },
    h('p', { class: 'quiet' }, t('week.said', { n })),
    h('ol', { 'aria-hidden': 'true' }, all.map((d) => h('li', { class: d.n ? 'on' : '' }, weekday(d.day)))));
}
