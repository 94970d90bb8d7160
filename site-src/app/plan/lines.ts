// Lines as the passage index has them, in phrases, and back.
import type { Lines, Ref } from '../types.ts';
import type { Phrases } from './phrases.ts';
import { refOf, verseOf } from './places.ts';
import type { Passage } from './rank.ts';

/** First and last phrase of lines. */
export function phrasesOf(x: Phrases, l: Pick<Lines, 'from' | 'to'>): [number, number] {
  const at = (r: Ref) => Math.min(Math.max(verseOf(x, r), 0), x.of.length - 2);
  let a = x.of[at(l.from)]!;
  let b = x.of[at(l.to) + 1]! - 1;
  while (l.from.w && a + 1 < x.n && x.verse[a + 1] === x.verse[a] && x.first[a + 1]! <= l.from.w)
    a++;
  while (l.to.w !== undefined && b > a && x.first[b]! > l.to.w) b--;
  return [a, b];
}

/** Lines of a passage. Words are named only where it begins or ends within a verse. */
export function linesOf(x: Phrases, p: Pick<Passage, 'a' | 'b'>, rule: string): Lines {
  const from = refOf(x, x.verse[p.a]!);
  const to = refOf(x, x.verse[p.b]!);
  if (x.first[p.a]! > 0) from.w = x.first[p.a]!;
  if (x.end[p.b] === 1) to.w = x.first[p.b]! + x.words[p.b]! - 1;
  return { rule, from, to };
}
