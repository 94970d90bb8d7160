// Which letters have which colour, by what the screen is for: finding, checking or reading.
import { look } from '../../colour/ink.ts';
import { written } from '../../marking/check.ts';
import { type Look, type Span, spanOf } from '../../marking/spans.ts';
import { rulesShown } from '../../plan/ladder.ts';
import { type Practice, result, stops } from '../../practice/practice.ts';
import * as state from '../../state.ts';
import type { Mark } from '../../types.ts';

const checked = (sign: 'found' | 'missed' | 'extra'): Look => ({
  name: sign,
  colour: `var(--${sign})`,
  sign,
});

/** The rules the learner has been taught, and the one to mark. */
export function known(p: Practice): Set<string> {
  const own = state.get().taught.filter((x) => x.learner === p.draft.learner);
  const set = new Set(own.map((x) => x.rule));
  if (p.rule) set.add(p.rule.id);
  return set;
}

export function colours(p: Practice): Span[] {
  const { phase, marks } = p.draft;
  const c = state.get().catalogue;
  const marked = (m: Mark, how: Look): Span => ({ v: m.v, w: m.w, l: m.l, ...how });
  const places = (rules: number[]) =>
    written(p.verses, rules, stops(p)).map((h) => spanOf(h, look(c.rules[h.e.rule]!.family)));
  if (p.answer) return places([p.index]);
  if (phase === 'find') return marks.map((m) => marked(m, look(p.rule!.family)));
  if (phase !== 'check') return places(rulesShown(c, p.rule?.id ?? '', known(p)));
  const r = result(p);
  return [
    ...r.found.map((f) => spanOf(f, checked('found'))),
    ...r.missed.map((m) => spanOf(m, checked('missed'))),
    ...r.extra.map((x) => marked(x.mark, checked('extra'))),
  ];
}
