// How a letter is read under the present stops: its name and marks, what the events say of its sound, and the rules on it.
import type { Event, Place, Rule, Settings, Verse } from '../types.ts';
import { fill, has, t } from '../i18n.ts';
import { counts } from './counts.ts';
import { letterAt, letterName, markNames } from './names.ts';
import { causeOf, type Stops } from './stops.ts';

export interface Explained { title: string; facts: string[]; rules: { rule: Rule; why: string; detail: string }[]; later: boolean }
export interface Book { rules: Rule[]; details: string[]; settings: Pick<Settings, 'madd' | 'arid'> }

/** The rule's sentence for one event, with the names of its letters and the count. */
export function why(book: Book, verses: Verse[], v: number, e: Event): string {
  const rule = book.rules[e.rule]!, cause = causeOf(verses, v, e);
  const letter = verses[v]!.words[e.w]!.letters[e.f]!;
  const own = `why.${rule.id}.${book.details[e.detail] ?? ''}`; // a detail that has a reason of its own
  return fill(has(own) ? t(own) : rule.why, {
    letter: letterName(letter),
    cause: cause ? letterName(letterAt(verses, cause)) : t('explain.next'),
    count: counts(rule, e, book.settings).want,
  });
}

// Facts of plain reading, told also before the rule itself has been taught.
const SILENT = new Set(['silent-letter', 'hamzat-wasl', 'sun-lam']);
const LONG = new Set(['madd', 'long-madd']);

export function explain(book: Book, verses: Verse[], stops: Stops, p: Place, known: Set<string>): Explained {
  const letter = letterAt(verses, p), marks = markNames(letter);
  const here = verses[p.v]!.events.filter((e) =>
    e.w === p.w && p.l >= e.f && p.l < e.f + e.n && stops.holds(p.v, e));
  const out: Explained = {
    title: letterName(letter), facts: [marks ? t('explain.marks', { marks }) : t('explain.bare')], rules: [], later: false,
  };
  const rules = here.map((e) => book.rules[e.rule]!);
  if (rules.some((r) => SILENT.has(r.id))) out.facts.push(t('explain.silent'));
  if (rules.some((r) => LONG.has(r.family))) out.facts.push(t('explain.long'));
  if (rules.some((r) => r.id === 'stop-form')) out.facts.push(t('explain.stop'));
  for (const e of here) {
    const rule = book.rules[e.rule]!, detail = `detail.${book.details[e.detail] ?? ''}`;
    if (known.has(rule.id)) out.rules.push({ rule, why: why(book, verses, p.v, e), detail: has(detail) ? t(detail) : '' });
    else out.later = true;
  }
  return out;
}
