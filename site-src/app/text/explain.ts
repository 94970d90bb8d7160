// How a letter is read under the present stops: its name and marks, what the events say of its
// sound, and the rules on it.
import {
  type Detail,
  type Event,
  type Lengths,
  type Letter,
  type Place,
  type Rule,
  Start,
  type Verse,
  type Word,
} from '../types.ts';
import { fill, t } from '../i18n.ts';
import { counts } from './counts.ts';
import { letterAt, letterName, markNames } from './names.ts';
import { causeOf, type Stops } from './stops.ts';

export interface Explained {
  title: string;
  facts: string[];
  /** held is how many counts the letter is held here, 0 for none. */
  rules: { rule: Rule; why: string; detail: string; held: number }[];
  later: Rule[];
}
/** What is said of the rules: details by an event's number, and the family's lengths. */
export interface Book {
  rules: Rule[];
  details: Detail[];
  settings: Lengths;
}

const WHEN = ['always', 'join', 'stop', 'start'];
const VOWEL = (m: number) =>
  (m >= 0x64b && m <= 0x652) || m === 0x6e1 || (m >= 0x8f0 && m <= 0x8f2);

/**
 * The letters that open some surahs are read by their names: no letter of such a word has a vowel
 * sign.
 */
export const opening = (w: Word) => !w.letters.some((l) => l.rune === 0x670 || l.marks.some(VOWEL));

/**
 * What sets an event apart from the common case of its rule, the most telling first: its detail,
 * that it is not written, that it is the name of an opening letter, the way of reading, the letter
 * that causes it. The rule may have a sentence for each.
 */
function kinds(book: Book, w: Word, e: Event, cause: Letter | undefined): string[] {
  return [
    book.details[e.detail]?.id,
    e.unwritten && 'unwritten',
    opening(w) && 'opening',
    WHEN[e.when],
    cause?.rune.toString(16).padStart(4, '0'),
  ].filter((k) => typeof k === 'string' && k !== '') as string[];
}

/** The sentence for one event, with the names of its letters and the count. */
export function why(book: Book, verses: Verse[], v: number, e: Event): string {
  const rule = book.rules[e.rule]!;
  const at = causeOf(verses, v, e);
  const cause = at && letterAt(verses, at);
  const word = verses[v]!.words[e.w]!;
  const letter = word.letters[e.l]!;
  const own = kinds(book, word, e, cause).find((k) => rule.cases?.[k]);
  return fill(own ? rule.cases![own]! : rule.why, {
    letter: letterName(letter),
    cause: cause ? letterName(cause) : t('explain.next'),
    count: counts(rule, e, book.settings).want,
  });
}

export function explain(
  book: Book,
  verses: Verse[],
  stops: Stops,
  p: Place,
  known: Set<string>,
): Explained {
  const letter = letterAt(verses, p);
  const marks = markNames(letter);
  const here = verses[p.v]!.events.filter((e) => e.w === p.w && e.l === p.l && stops.holds(p.v, e));
  const out: Explained = {
    title: letterName(letter),
    facts: [marks ? t('explain.marks', { marks }) : t('explain.bare')],
    rules: [],
    later: [],
  };
  if (verses[p.v]!.words[p.w]!.lined) out.facts.push(t('explain.lined'));
  // Facts of plain reading are told also before the rule itself has been taught.
  const role = (x: Rule['role'], e: Event) => book.rules[e.rule]!.role === x;
  if (here.some((e) => role('silent', e) && e.when !== Start)) out.facts.push(t('explain.silent'));
  if (here.some((e) => role('long', e))) out.facts.push(t('explain.long'));
  if (here.some((e) => role('ending', e))) out.facts.push(t('explain.stop'));
  for (const e of here) {
    const rule = book.rules[e.rule]!;
    if (known.has(rule.id))
      out.rules.push({
        rule,
        why: why(book, verses, p.v, e),
        detail: book.details[e.detail]?.text ?? '',
        held: counts(rule, e, book.settings).want,
      });
    else if (!out.later.includes(rule)) out.later.push(rule);
  }
  return out;
}
