// How the chosen letter is read, in a panel above the thumb.
import * as state from '../../state.ts';
import { ar, h, refill } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { explain } from '../../text/explain.ts';
import * as live from './live.ts';
import { known } from './spans.ts';

export function letter(el: HTMLElement) {
  const l = live.get(), p = l?.explained;
  el.hidden = !p;
  if (!l || !p) { el.replaceChildren(); return; }
  const x = explain({ ...state.get().catalogue, settings: state.get().settings }, l.verses, live.stops(l), p, known(l));
  refill(el,
    h('div', { class: 'row' }, h('h2', { 'data-t': 'letter-name' }, x.title), ar(l.verses[p.v]!.words[p.w]!.text, 'ar small'),
      h('button', { class: 'plain', 'data-t': 'letter-close', onclick: () => live.set({ explained: undefined, ask: false }) }, t('explain.close'))),
    x.facts.map((f) => h('p', {}, f)),
    x.rules.map((r) => h('p', { class: 'rule-why', style: `--pencil:var(--c-${r.rule.family});--form:var(--form-${r.rule.family},solid)` },
      h('b', {}, r.rule.name), ' ', r.why, r.detail && ` ${r.detail}`)),
    x.later && h('p', { class: 'quiet', 'data-t': 'later' }, t('explain.later')));
}
