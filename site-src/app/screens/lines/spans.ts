// Which letters have which colour, by what the screen is for: finding, checking or reading.
import * as state from '../../state.ts';
import type { Event } from '../../types.ts';
import { look } from '../../colour/ink.ts';
import type { Look, Span } from '../../marking/paint.ts';
import { places } from '../../marking/check.ts';
import { type Live, result, stops } from './live.ts';

const said = (sign: 'found' | 'missed' | 'extra'): Look => ({ name: sign, colour: `var(--${sign})`, sign });

/** The rules the learner has been taught, and the one in hand. */
export function known(l: Live): Set<string> {
  const set = new Set(state.get().taught.filter((x) => x.learner === l.draft.learner).map((x) => x.rule));
  if (l.rule) set.add(l.rule.id);
  return set;
}

export function spans(l: Live): Span[] {
  const at = (v: number, e: Event, how: Look): Span => ({ v, w: e.w, l: e.l, ...how });
  const { phase, marks } = l.draft, rules = state.get().catalogue.rules;
  if (l.answer) {
    return places(l.verses, l.index, stops(l)).filter((h) => !h.e.unwritten).map((h) => at(h.v, h.e, look(l.rule!.family)));
  }
  if (phase === 'find') return marks.map((m) => ({ v: m.v, w: m.w, l: m.l, ...look(l.rule!.family) }));
  if (phase === 'check') {
    const r = result(l);
    return [
      ...r.found.map((f) => at(f.v, f.e, said('found'))),
      ...r.missed.map((m) => at(m.v, m.e, said('missed'))),
      ...r.extra.map((x) => ({ v: x.mark.v, w: x.mark.w, l: x.mark.l, ...said('extra') })),
    ];
  }
  const taught = known(l), now = stops(l), out: Span[] = [], taken = new Set<string>();
  // The rule in hand first: where two rules meet on a letter, its colour is the one shown.
  for (const mine of [true, false]) {
    l.verses.forEach((verse, v) => verse.events.forEach((e) => {
      const rule = rules[e.rule]!, key = `${v}.${e.w}.${e.l}`;
      if ((rule.id === l.rule?.id) !== mine || !taught.has(rule.id) || e.unwritten || taken.has(key) || !now.holds(v, e)) return;
      taken.add(key);
      out.push(at(v, e, look(rule.family)));
    }));
  }
  return out;
}
