// Places in the text as the passage index counts them: verses from 0, juz and pages.
import type { Catalogue, Ref } from '../types.ts';
import type { Phrases } from './phrases.ts';

/** A verse's number from 0 over the whole text, and back. */
export const verseOf = (x: Phrases, r: Ref) => x.surahs[r.s - 1]! + r.a - 1;

export function refOf(x: Phrases, verse: number): Ref {
  let s = 1;
  while (s < 114 && x.surahs[s]! <= verse) s++;
  return { s, a: verse - x.surahs[s - 1]! + 1 };
}

/** The juz, from 0, of a verse. */
export const juzOf = (c: Pick<Catalogue, 'juz'>, r: Ref) =>
  c.juz.findLastIndex(([s, a]) => s < r.s || (s === r.s && a <= r.a));

/** First and last verse of a juz or a page, from the catalogue's list of beginnings. */
export function part(x: Phrases, list: [number, number][], k: number): [number, number] {
  const at = (i: number) =>
    list[i] ? verseOf(x, { s: list[i][0], a: list[i][1] }) : x.of.length - 1;
  return [at(k - 1), at(k) - 1];
}

/**
 * The verses from a place through the next so many pages; near the end of the text the last so
 * many.
 */
export function ahead(
  x: Phrases,
  c: Pick<Catalogue, 'pages'>,
  place: Ref,
  pages: number,
): [number, number] {
  const v = verseOf(x, place);
  let page = c.pages.length;
  while (page > 1 && part(x, c.pages, page)[0] > v) page--;
  const last = Math.min(c.pages.length, page + pages - 1);
  return [
    page + pages - 1 > c.pages.length ? part(x, c.pages, Math.max(1, last - pages + 1))[0] : v,
    part(x, c.pages, last)[1],
  ];
}
