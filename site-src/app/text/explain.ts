// How a letter is read under the present stops: its name and marks, what the events say of its sound, and the rules on it.
import { type Event, type Letter, type Place, type Rule, type Settings, Start, type Verse, type Word } from '../types.ts';
import { fill, has, t } from '../i18n.ts';
import { counts } from './counts.ts';
import { letterAt, letterName, markNames } from './names.ts';
import { causeOf, type Stops } from './stops.ts';

export interface Explained { title: string; facts: string[]; rules: { rule: Rule; why: string; detail: string }[]; later: Rule[] }
export interface Book { rules: Rule[]; details: string[]; settings: Pick<Settings, 'madd' | 'arid'> }

const WHEN = ['always', 'join', 'stop', 'start'];
const VOWEL = (m: number) => m >= 0x64b && m <= 0x652 || m === 0x6e1 || m >= 0x8f0 && m <= 0x8f2;

/** The letters that open some surahs are read by their names: no letter of such a word has a vowel sign. */
export const opening = (w: Word) => !w.letters.some((l) => l.rune === 0x670 || l.marks.some(VOWEL));

/**
 * What sets an event apart from the common case of its rule, the most telling first. A sentence of its own may stand in the
 * catalogue as why.RULE.KIND: for a detail, a sound that is not written, the name of an opening letter, the way of reading,
 * or the letter that causes it.
 */
function kinds(book: Book, w: Word, e: Event, cause: Letter | undefined): string[] {
  return [book.details[e.detail], e.unwritten && 'unwritten', opening(w) && 'opening', WHEN[e.when], cause?.rune.toString(16).padStart(4, '0')]
    .filter((k) => typeof k === 'string' && k !== '') as string[];
}

/** The sentence for one event, with the names of its letters and the count. */
export function why(book: Book, verses: Verse[], v: number, e: Event): string {
  const rule = book.rules[e.rule]!, at = causeOf(verses, v, e), cause = at && letterAt(verses, at);
  const word = verses[v]!.words[e.w]!, letter = word.letters[e.f]!;
  const own = kinds(book, word, e, cause).map((k) => `why.${rule.id}.${k}`).find(has);
  return fill(own ? t(own) : rule.why, {
    letter: letterName(letter),
    cause: cause ? letterName(cause) : t('explain.next'),
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
    title: letterName(letter), facts: [marks ? t('explain.marks', { marks }) : t('explain.bare')], rules: [], later: [],
  };
  if (verses[p.v]!.words[p.w]!.lined) out.facts.push(t('explain.lined'));
  const rules = here.map((e) => book.rules[e.rule]!);
  if (here.some((e) => SILENT.has(book.rules[e.rule]!.id) && e.when !== Start)) out.facts.push(t('explain.silent'));
  if (rules.some((r) => LONG.has(r.family))) out.facts.push(t('explain.long'));
  if (rules.some((r) => r.id === 'stop-form')) out.facts.push(t('explain.stop'));
  for (const e of here) {
    const rule = book.rules[e.rule]!, detail = `detail.${book.details[e.detail] ?? ''}`;
    if (known.has(rule.id)) out.rules.push({ rule, why: why(book, verses, p.v, e), detail: has(detail) ? t(detail) : '' });
    else if (!out.later.includes(rule)) out.later.push(rule);
  }
  return out;
}
