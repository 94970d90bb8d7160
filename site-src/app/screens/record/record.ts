// The record: progress by rule, every session, newest first, and the backup.
import * as state from '../../state.ts';
import * as store from '../../store/store.ts';
import { session } from '../../store/whole.ts';
import { pencil, swatch } from '../../colour/ink.ts';
import { h, refill } from '../../dom.ts';
import { dayName, t } from '../../i18n.ts';
import { keep } from '../../actions/keep.ts';
import { linesHash } from '../../share/link.ts';
import { linesName } from '../../text/names.ts';
import type { Entry } from '../../types.ts';
import { closed } from '../closed.ts';
import { type View, when } from '../view.ts';
import { backup } from './backup.ts';
import { byRule } from './totals.ts';

/** Sessions shown before the rest is asked for. */
const PAGE = 50;

export function record(): View {
  const node = h('main', { class: 'record' });
  let shown = PAGE,
    open = true;
  const draw = () => {
    const shut = closed();
    if (shut) return refill(node, shut);
    const l = state.learner(),
      all = l ? state.sessionsOf(l.id) : [],
      days = new Map<string, Entry[]>();
    for (const s of all.slice(0, shown)) days.set(s.day, [...(days.get(s.day) ?? []), s]);
    refill(
      node,
      h('h1', { tabindex: '-1' }, t('record.title', { child: l?.name || t('child') })),
      all.length === 0 && h('p', { class: 'empty', 'data-t': 'empty' }, t('record.empty')),
      byRule(all, open, (now) => {
        open = now;
      }),
      [...days].map(([day, list]) =>
        h('section', {}, h('h2', {}, dayName(day)), h('ul', { class: 'sessions' }, list.map(row))),
      ),
      all.length > shown &&
        h(
          'button',
          {
            class: 'plain',
            'data-t': 'more',
            onclick: () => {
              shown += PAGE;
              draw();
            },
          },
          t('record.more', { n: all.length - shown }),
        ),
      backup(),
    );
  };
  return {
    node,
    title: t('nav.record'),
    update: when(() => [...state.records(), state.get().aside], draw),
  };
}

function row(s: Entry): HTMLElement {
  const c = state.get().catalogue,
    rule = c.rules.find((r) => r.id === s.rule),
    n = s.found + s.missed;
  return h(
    'li',
    { 'data-t': 'session' },
    h(
      'div',
      {},
      h(
        'p',
        {},
        h(
          'b',
          rule ? { class: 'inked', style: pencil(rule.family) } : {},
          rule && swatch(rule.family),
          rule?.name ?? (s.rule || t('record.reading')),
        ),
      ),
      h(
        'p',
        { class: 'quiet' },
        h(
          'a',
          { href: linesHash({ rule: rule?.id ?? '', from: s.from, to: s.to }) },
          linesName(c.surahs, s.from, s.to),
        ),
        ` · ${t(`outcome.${s.outcome}`)}`,
        s.rule && n > 0 ? ` · ${t('record.found', { n: s.found, of: n })}` : '',
      ),
    ),
    h(
      'button',
      {
        class: 'plain',
        'data-t': 'remove',
        'aria-label': t('record.remove-this', { day: dayName(s.day) }),
        onclick: () => void remove(s),
      },
      t('record.remove'),
    ),
  );
}

async function remove(s: Entry) {
  // with its marks, which Undo brings back; undefined where they are damaged
  const was = session(s.id);
  if (!(await keep(() => was.then(() => store.dropSession(s.id))))) return;
  const whole = await was;
  state.set({
    notice: {
      text: t('record.removed'),
      ...(whole && {
        action: { label: t('undo'), run: () => void keep(() => store.putSession(whole)) },
      }),
    },
  });
}
