// One lesson of the ladder: how far it is, since when; inside, what it needs, the lesson, lines,
// history, and its place.
import * as state from '../../state.ts';
import { pencil, swatch } from '../../colour/ink.ts';
import { ar, h } from '../../dom.ts';
import { dateName, dayName, join, t } from '../../i18n.ts';
import { type Child, dateOf, type Standing } from '../../plan/child.ts';
import { missing } from '../../plan/units.ts';
import { reason } from '../../plan/words.ts';
import { linesHash } from '../../share/link.ts';
import { linesName } from '../../text/names.ts';
import { lessonPath } from '../lesson.ts';
import { move, moves, setState, STATES } from './change.ts';
import { progress } from './criterion.ts';

/** Sessions shown in the history. */
const LAST = 6;

export function rung(
  c: Child,
  s: Standing,
  at: number,
  open: Set<string>,
  next: boolean,
): HTMLElement {
  const { units, c: cat } = c.course,
    u = units[s.unit]!,
    key = `rung-${u.id}`,
    mine = u.rules.map((r) => cat.rules[r]!);
  const names = (list: number[]) => join(list.map((n) => units[n]!.name)),
    lack = missing(units, c.taught, s.unit),
    who = state.learner();
  const can = moves(c, s.unit, at);
  const button = (to: number, name: 'earlier' | 'later') =>
    h(
      'button',
      {
        class: 'plain',
        'data-t': `${u.id}-${name}`,
        disabled: to < 0,
        onclick: () => void move(s.unit, to),
      },
      t(`rules.${name}`),
    );
  return h(
    'li',
    { class: s.state, style: pencil(u.family) },
    h(
      'details',
      { 'data-t': key, open: open.has(key), name: 'rung' },
      h(
        'summary',
        {},
        h(
          'span',
          { class: 'rung-name' },
          h('span', { class: 'inked' }, swatch(u.family), u.name),
          ' ',
          u.ar && ar(u.ar, 'ar small'),
        ),
        h('span', { class: 'state' }, said(s), next && ` · ${t('step.next')}`),
      ),
      mine.map((r) => h('p', {}, mine.length > 1 && h('b', {}, `${r.name}. `), r.short)),
      u.needs.length > 0 &&
        h(
          'p',
          { class: 'quiet' },
          t(who && lack.length ? 'rules.needs-first' : 'rules.needs', {
            rules: names(who && lack.length ? lack : u.needs),
          }),
        ),
      h(
        'p',
        { class: 'quiet' },
        t('rules.place', { n: at + 1 }),
        ' ',
        c.learner.order ? t('plan.your-order') : reason(cat, s.unit),
      ),
      s.state === 'learning' && progress(c, s),
      s.due >= 0 &&
        h(
          'p',
          { class: 'quiet', 'data-t': 'due' },
          t(s.state === 'due' ? 'rules.is-due' : 'rules.due', { day: dayName(dateOf(s.due)) }),
        ),
      h(
        'div',
        { class: 'row' },
        h('a', { class: 'button plain', href: lessonPath(u.id) }, t('rules.lesson')),
        mine.map((r) =>
          h(
            'a',
            { class: 'button plain', href: `#/lines?rule=${r.id}`, 'data-t': `lines-${r.id}` },
            mine.length > 1 ? t('rules.lines-of', { rule: r.name }) : t('rules.lines'),
          ),
        ),
      ),
      who && history(c, u.rules),
      who &&
        h(
          'div',
          { class: 'row choice', role: 'group', 'aria-label': t('rules.state') },
          STATES.map((x) =>
            h(
              'button',
              {
                class: 'chip',
                'data-t': `${u.id}-${x}`,
                'aria-pressed': String(x === s.state || (x === 'known' && s.state === 'due')),
                onclick: () => void setState(s.unit, x),
              },
              t(`step.${x}`),
            ),
          ),
        ),
      who && h('div', { class: 'row' }, button(can.earlier, 'earlier'), button(can.later, 'later')),
    ),
  );
}

/** The state in words, with its date. */
function said(s: Standing): string {
  if (s.state === 'not-yet') return t('step.not-yet');
  const day = dateName(dateOf(s.state === 'learning' ? s.since : s.known));
  return `${t(`step.${s.state}`)} · ${t(s.state === 'learning' ? 'rules.since' : 'rules.known-since', { day })}`;
}

function history(c: Child, rules: number[]): HTMLElement | false {
  const { c: cat } = c.course,
    ids = rules.map((r) => cat.rules[r]!.id),
    all = c.sessions.filter((s) => ids.includes(s.rule));
  return (
    all.length > 0 &&
    h(
      'details',
      { class: 'plan-history opens' },
      h('summary', {}, t('rules.history', { n: all.length })),
      h(
        'ul',
        {},
        all
          .slice(-LAST)
          .reverse()
          .map((s) =>
            h(
              'li',
              {},
              `${dateName(s.day)}: `,
              h(
                'a',
                { href: linesHash({ rule: s.rule, from: s.from, to: s.to }) },
                linesName(cat.surahs, s.from, s.to),
              ),
              s.found + s.missed > 0 &&
                ` · ${t('record.found', { n: s.found, of: s.found + s.missed })}`,
              ` · ${t(`outcome.${s.outcome}`)}`,
            ),
          ),
      ),
    )
  );
}
