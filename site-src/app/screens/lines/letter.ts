// How the chosen letter is read, in a panel above the thumb.
import * as state from '../../state.ts';
import { pencil, swatch } from '../../colour/ink.ts';
import { ar, h, renew } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { linesHash } from '../../share/link.ts';
import { explain } from '../../text/explain.ts';
import type { Rule } from '../../types.ts';
import { lessonPath } from '../lesson.ts';
import * as live from './live.ts';
import { known } from './spans.ts';

export function letter(el: HTMLElement) {
  const l = live.get(),
    p = l?.explained;
  el.hidden = !p;
  if (!l || !p) {
    el.replaceChildren();
    return;
  }
  const x = explain(
    { ...state.get().catalogue, settings: state.get().settings },
    l.verses,
    live.stops(l),
    p,
    known(l),
  );
  renew(
    el,
    h(
      'div',
      { class: 'row' },
      h('h2', { 'data-t': 'letter-name' }, x.title),
      ar(l.verses[p.v]!.words[p.w]!.text, 'ar small'),
      h(
        'button',
        {
          class: 'plain',
          'data-t': 'letter-close',
          onclick: () => live.set({ explained: undefined, ask: false }),
        },
        t('explain.close'),
      ),
    ),
    x.facts.map((f) => h('p', {}, f)),
    x.rules.map((r) =>
      h(
        'p',
        { class: 'rule-why', style: pencil(r.rule.family) },
        swatch(r.rule.family),
        lesson(l, r.rule, h('b', {}, r.rule.name)),
        ' ',
        r.why,
        r.detail && ` ${r.detail}`,
      ),
    ),
    x.later.length > 0 && h('p', { class: 'quiet', 'data-t': 'later' }, t('explain.later')),
    x.later.length > 0 &&
      h(
        'p',
        { class: 'quiet', 'data-t': 'later-lessons' },
        t('explain.ahead'),
        ' ',
        x.later.flatMap((r, i) => [i > 0 && ' · ', lesson(l, r, r.name)]),
      ),
  );
}

/** To the rule's lesson, with the address of these lines, so that the page can lead back. */
function lesson(l: live.Live, r: Rule, name: HTMLElement | string): HTMLElement {
  return h(
    'a',
    {
      href: lessonPath(r.lesson) + linesHash({ ...l.draft.lines, rule: l.rule?.id ?? '' }),
      'data-t': `lesson-${r.id}`,
    },
    name,
  );
}
