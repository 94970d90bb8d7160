// Compares the child's marks with the places of the rules. Pure; runs on every stop and every mark.
import {
  type Event,
  type Lengths,
  type Mark,
  type Place,
  type Rule,
  samePlace,
  Start,
  type Verse,
} from '../types.ts';
import { counts } from '../text/counts.ts';
import type { Book } from '../text/explain.ts';
import { causeOf, type Stops } from '../text/stops.ts';

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
 * A mark on no place of the rules; other is a place that would be here for another choice of stops.
 */
export interface Extra {
  mark: Mark;
  other?: Event;
}
/**
 * A mark that is right for another reason: e is the event of a rule heard alike on its letter, or an
 * event that its letter causes.
 */
export interface Alike extends Hit {
  mark: Mark;
}
/** beside are marks that stand beside a place that was missed. */
export interface Result {
  found: Found[];
  missed: Missed[];
  beside: Mark[];
  extra: Extra[];
  alike: Alike[];
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

/** Compares the marks of one pencil with the places of its rules. */
export function check(
  verses: Verse[],
  rules: number[],
  marks: Mark[],
  stops: Stops,
  book: Book,
): Result {
  const all = places(verses, rules, stops);
  const out: Result = { found: [], missed: [], beside: [], extra: [], alike: [] };
  for (const h of all) {
    const here = marks.filter((m) => on(m, h.v, h.e));
    if (here.length) out.found.push(counted(h, here, stops, book));
    else if (!h.e.unwritten) out.missed.push({ ...h, near: false });
  }
  for (const mark of marks) {
    if (all.some((h) => on(mark, h.v, h.e))) continue;
    const e = likeness(verses, rules, mark, stops, book);
    if (e) out.alike.push({ mark, ...e });
    const near = out.missed.filter((m) => on(mark, m.v, m.e, 1));
    for (const m of near) m.near = true;
    if (!e && near.length) out.beside.push(mark);
    else if (!e) out.extra.push(elsewhere(verses, rules, mark));
  }
  return out;
}

function counted(h: Hit, here: Mark[], stops: Stops, { rules, details, settings }: Book): Found {
  const { v, e } = h;
  const detail = details[e.detail];
  const { want, also } = counts(rules[e.rule]!, e, settings, detail, stops.after(v, e.w));
  const mark = here.find((m) => m.count) ?? here[0]!;
  const told = (): Found['count'] => {
    if (!mark.count || !want) return 'none';
    if (mark.count === want) return 'right';
    return also.includes(mark.count) ? 'also' : 'other';
  };
  return { v, e, mark, count: told(), want };
}

/** A letter that is silent otherwise is read where the reader starts on it. */
const isRead = (rule: Rule, e: Event) => rule.role === 'silent' && e.when === Start;

/** Why a mark is right though the rules have no place there. */
function likeness(
  verses: Verse[],
  own: number[],
  mark: Mark,
  stops: Stops,
  { rules, settings }: Book,
): Hit | undefined {
  const alike = (a: Rule, b: Rule) => a.alike?.includes(b.id) && sameLength(a, b, settings);
  const fits = (r: number) => own.includes(r) || own.some((o) => alike(rules[o]!, rules[r]!));
  for (const [v, verse] of verses.entries())
    for (const e of verse.events) {
      const rule = rules[e.rule]!;
      if (!fits(e.rule) || !stops.holds(v, e) || isRead(rule, e)) continue;
      if (!own.includes(e.rule) && on(mark, v, e)) return { v, e };
      const cause = rule.onCause && causeOf(verses, v, e);
      if (cause && samePlace(cause, mark)) return { v, e };
    }
  return undefined;
}

/** Whether no choice of lengths tells two rules apart. */
const sameLength = (a: Rule, b: Rule, s: Lengths) =>
  !a.setting || !b.setting || s[a.setting] === s[b.setting];

/** A mark on no place, with what would be one for another choice of stops. */
function elsewhere(verses: Verse[], rules: number[], mark: Mark): Extra {
  const other = verses[mark.v]!.events.find((e) => rules.includes(e.rule) && on(mark, mark.v, e));
  return other ? { mark, other } : { mark };
}
