// What is typed into the form for a session, and what a session says, each made of the other.
import type { Below, Vars } from '../i18n.ts';
import { ascii, between, MOST } from '../share/link.ts';
import { date, LONGEST_NOTE, MOST_MINUTES, MOST_PLACES } from '../store/checks.ts';
import type { Catalogue, Outcome, Ref, Session, Tally } from '../types.ts';
import { pencilsWith, ruleOf } from './rules.ts';
import { shareOf, tallies } from './totals.ts';

/** Places of a rule, as typed. */
export interface TypedRule {
  rule: string;
  found: string;
  of: string;
}

/** The form as it stands: what is typed is not yet read. */
export interface Typed {
  day: string;
  /** Surahs by number, verses as typed. */
  from: { s: number; a: string };
  to: { s: number; a: string };
  rules: TypedRule[];
  outcome: Outcome | '';
  paper: boolean;
  minutes: string;
  note: string;
}

/** What is wrong with a field, by its name; key is one of the catalogue below "edit.bad.". */
export interface Problem {
  field: string;
  key: Below<'edit.bad'>;
  vars?: Vars;
}

/** What the form says of a session. */
export type Said = Pick<
  Session,
  'day' | 'rule' | 'from' | 'to' | 'found' | 'missed' | 'outcome'
> & {
  [K in 'also' | 'pencils' | 'looked' | 'paper' | 'minutes' | 'note']: Session[K] | undefined;
};

const text = (n: number | undefined) => (n === undefined ? '' : String(n));

/** The form as a session fills it. */
export function typedOf(s: Session): Typed {
  return {
    day: s.day,
    from: { s: s.from.s, a: String(s.from.a) },
    to: { s: s.to.s, a: String(s.to.a) },
    rules: tallies(s).map(typedRule),
    outcome: s.outcome,
    paper: !!s.paper,
    minutes: text(s.minutes),
    note: s.note ?? '',
  };
}

function typedRule({ rule, found, missed }: Tally): TypedRule {
  const of = found + missed;
  return { rule, found: of ? String(found) : '', of: of ? String(of) : '' };
}

/** What a person or a keyboard puts around figures: blanks, and signs of direction. */
const bare = (typed: string) => ascii(typed.replace(/[\u200e\u200f\u061c\u2066-\u2069]/g, ''));

/** A whole number as typed, in any of the digits that are understood; undefined if it is none. */
export function numberIn(typed: string): number | undefined {
  const plain = bare(typed);
  return /^\d{1,6}$/.test(plain) ? Number(plain) : undefined;
}

/** A day as typed, YYYY-MM-DD, also with strokes or dots; undefined if it is no day. */
export function dayIn(typed: string): string | undefined {
  const m = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(bare(typed));
  const day = m && `${m[1]}-${m[2]!.padStart(2, '0')}-${m[3]!.padStart(2, '0')}`;
  return day && date(day) ? day : undefined;
}

/** A note without signs that are none, at most as long as one may be. */
export const noteIn = (typed: string) =>
  typed
    .replace(/\r\n?/g, '\n')
    .replace(/[\u0000-\u0009\u000b-\u001f\u007f]/g, ' ')
    .trim();

/** Gathers what is wrong while a form is read. */
class Reader {
  readonly problems: Problem[] = [];

  bad(field: string, key: Problem['key'], vars?: Vars): undefined {
    this.problems.push({ field, key, ...(vars && { vars }) });
  }

  /** A number that may be missing. */
  number(field: string, typed: string, most: number): number | undefined {
    if (!bare(typed)) return undefined;
    const n = numberIn(typed);
    if (n === undefined) return this.bad(field, 'number', { found: typed.slice(0, 40) });
    return n <= most ? n : this.bad(field, 'most', { most });
  }

  day(typed: string, today: string): string | undefined {
    const day = dayIn(typed);
    if (!day) return this.bad('day', bare(typed) ? 'day' : 'no-day');
    return day <= today ? day : this.bad('day', 'future');
  }

  verse(c: Catalogue, field: 'from' | 'to', { s, a: typed }: Typed['from']): Ref | undefined {
    const surah = c.surahs[s - 1];
    const a = numberIn(typed);
    if (!surah) return this.bad(field, 'surah');
    if (a === undefined || a < 1 || a > surah.count)
      return this.bad(field, 'verse', { surah: surah.la, n: surah.count });
    return { s, a };
  }

  lines(c: Catalogue, x: Typed): { from: Ref; to: Ref } | undefined {
    const from = this.verse(c, 'from', x.from);
    const to = this.verse(c, 'to', x.to);
    if (!from || !to) return undefined;
    const n = between(c, from, to);
    if (n < 1) return this.bad('to', 'order');
    return n <= MOST ? { from, to } : this.bad('to', 'many', { n, most: MOST });
  }

  tally({ rule, found: typed, of: all }: TypedRule): Tally {
    const field = `rule-${rule}`;
    const before = this.problems.length;
    const found = this.number(field, typed, MOST_PLACES);
    const of = this.number(field, all, MOST_PLACES);
    if (this.problems.length === before) {
      if ((found === undefined) !== (of === undefined)) this.bad(field, 'both');
      else if (found !== undefined && found > of!)
        this.bad(field, 'more', { found: String(found) });
    }
    return { rule, found: found ?? 0, missed: Math.max(0, (of ?? 0) - (found ?? 0)) };
  }
}

/**
 * What the form says, or what is wrong with it. was is the session that it corrects; one with marks
 * keeps its lines. today is the last day that there can be.
 */
export function read(
  c: Catalogue,
  x: Typed,
  was: Session | undefined,
  today: string,
): Said | Problem[] {
  const r = new Reader();
  const day = r.day(x.day, today);
  const lines = was && sameLines(was, x) ? was : r.lines(c, x);
  const list = x.rules.map((y) => r.tally(y));
  if (!x.outcome) r.bad('outcome', 'outcome');
  const minutes = r.number('minutes', x.minutes, MOST_MINUTES);
  const note = noteIn(x.note);
  if (note.length > LONGEST_NOTE) r.bad('note', 'note', { n: note.length, most: LONGEST_NOTE });
  if (r.problems.length || !day || !lines || !x.outcome) return r.problems;
  const rule = ruleOf(was, list);
  const own = list.find((y) => y.rule === rule);
  const also = list.filter((y) => y !== own);
  return {
    day,
    rule,
    from: lines.from,
    to: lines.to,
    found: own?.found ?? 0,
    missed: own?.missed ?? 0,
    also: also.length ? also : undefined,
    pencils: pencilsWith(was, rule, list),
    looked: x.paper ? undefined : lookedOf(was, list),
    outcome: x.outcome,
    paper: x.paper || undefined,
    minutes,
    note: note || undefined,
  };
}

/** Whether the lines are still those of a session, whose words they then keep. */
const sameLines = ({ from, to }: Session, x: Typed) =>
  from.s === x.from.s &&
  to.s === x.to.s &&
  numberIn(x.from.a) === from.a &&
  numberIn(x.to.a) === to.a;

/** Places found before looking again, unless there are now fewer found at all. */
function lookedOf(was: Session | undefined, list: Tally[]): number | undefined {
  const looked = was?.looked;
  if (looked === undefined || JSON.stringify(tallies(was!)) === JSON.stringify(list)) return looked;
  return looked > shareOf(list).found ? undefined : looked;
}
