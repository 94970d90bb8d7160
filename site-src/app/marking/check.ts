// Compares the child's marks with the places of the rule. Pure; runs on every stop and every mark.
import type { Detail, Event, Lengths, Mark, Place, Rule, Verse } from '../types.ts';
import { counts } from '../text/counts.ts';
import type { Stops } from '../text/stops.ts';

export interface Hit {
  v: number;
  e: Event;
}
export interface Found extends Hit {
  mark: Mark;
  count: 'none' | 'right' | 'also' | 'other';
  want: number;
}
export interface Missed extends Hit {
  near: boolean;
}
/**
 * A mark on no place of the rule; other is a place that would be here for another choice of stops.
 */
export interface Extra {
  mark: Mark;
  other?: Event;
}
export interface Result {
  found: Found[];
  missed: Missed[];
  extra: Extra[];
}

const on = (m: Place, v: number, e: Event, by = 0) =>
  m.v === v && m.w === e.w && Math.abs(m.l - e.l) <= by;

/**
 * Every place of the rules that holds under the stops, the places of the first rule first; also
 * what is heard without being written.
 */
export function places(verses: Verse[], rules: number[], stops: Stops): Hit[] {
  const rank = new Map(rules.map((r, i) => [r, i]));
  return verses
    .flatMap((x, v) =>
      x.events.filter((e) => rank.has(e.rule) && stops.holds(v, e)).map((e) => ({ v, e })),
    )
    .sort((a, b) => rank.get(a.e.rule)! - rank.get(b.e.rule)!);
}

/** Those of them that a child can mark. */
export const written = (verses: Verse[], rules: number[], stops: Stops) =>
  places(verses, rules, stops).filter((h) => !h.e.unwritten);

/** details are the catalogue's, by the number that an event has. */
export function check(
  verses: Verse[],
  index: number,
  rule: Rule,
  marks: Mark[],
  stops: Stops,
  s: Lengths,
  details: Detail[],
): Result {
  const all = places(verses, [index], stops);
  const out: Result = { found: [], missed: [], extra: [] };
  const used = new Set<Mark>(marks.filter((m) => all.some((h) => on(m, h.v, h.e))));
  for (const { v, e } of all) {
    const here = marks.filter((m) => on(m, v, e));
    if (here.length) {
      const { want, also } = counts(rule, e, s, details[e.detail], stops.after(v, e.w));
      const mark = here.find((m) => m.count) ?? here[0]!;
      const count =
        !mark.count || !want
          ? 'none'
          : mark.count === want
            ? 'right'
            : also.includes(mark.count)
              ? 'also'
              : 'other';
      out.found.push({ v, e, mark, count, want });
    } else if (!e.unwritten) {
      const beside = marks.filter((m) => !used.has(m) && on(m, v, e, 1));
      beside.forEach((m) => used.add(m));
      out.missed.push({ v, e, near: beside.length > 0 });
    }
  }
  for (const mark of marks) {
    if (used.has(mark)) continue;
    const other = verses[mark.v]!.events.find((e) => e.rule === index && on(mark, mark.v, e));
    out.extra.push(other ? { mark, other } : { mark });
  }
  return out;
}
