// Which letters have which colour, by what the screen is for: finding, checking or reading.
import * as state from '../../state.ts';
import { look } from '../../colour/ink.ts';
import { written } from '../../marking/check.ts';
import { type Look, type Span, spanOf } from '../../marking/spans.ts';
import { shown } from '../../plan/ladder.ts';
import type { Mark } from '../../types.ts';
import { type Live, result, stops } from './live.ts';

const said = (sign: 'found' | 'missed' | 'extra'): Look => ({
  name: sign,
  colour: `var(--${sign})`,
  sign,
});

/** The rules the learner has been taught, and the one in hand. */
export function known(l: Live): Set<string> {
  const set = new Set(
    state
      .get()
      .taught.filter((x) => x.learner === l.draft.learner)
      .map((x) => x.rule),
  );
  if (l.rule) set.add(l.rule.id);
  return set;
}

export function spans(l: Live): Span[] {
  const { phase, marks } = l.draft,
    c = state.get().catalogue,
    now = stops(l);
  const marked = (m: Mark, how: Look): Span => ({ v: m.v, w: m.w, l: m.l, ...how });
  const drawn = (rules: number[]) =>
    written(l.verses, rules, now).map((h) => spanOf(h, look(c.rules[h.e.rule]!.family)));
  if (l.answer) return drawn([l.index]);
  if (phase === 'find') return marks.map((m) => marked(m, look(l.rule!.family)));
  if (phase !== 'check') return drawn(shown(c, l.rule?.id ?? '', known(l)));
  const r = result(l);
  return [
    ...r.found.map((f) => spanOf(f, said('found'))),
    ...r.missed.map((m) => spanOf(m, said('missed'))),
    ...r.extra.map((x) => marked(x.mark, said('extra'))),
  ];
}
