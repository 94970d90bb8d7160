// Places in the text as the passage index counts them: verses from 0, juz and pages.
import type { Catalogue, Ref } from '../types.ts';
import type { Phrases } from './phrases.ts';

/** A verse's number from 0 over the whole text, and back. */
export const verseOf = (x: Phrases, r: Ref) => x.surahs[r.s - 1]! + r.a - 1;

export function refOf(x: Phrases, verse: number): Ref {
  const s = surahOf(x, verse);
  return { s: s + 1, a: verse - x.surahs[s]! + 1 };
}

/** The surah, from 0, of a verse by its number. */
export function surahOf({ surahs }: Phrases, verse: number): number {
  let low = 0;
  let high = surahs.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (surahs[middle]! <= verse) low = middle;
    else high = middle;
  }
  return low;
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

/** The page, from 1, of a verse by its number. */
function pageOf(x: Phrases, c: Pick<Catalogue, 'pages'>, verse: number): number {
  let page = c.pages.length;
  while (page > 1 && part(x, c.pages, page)[0] > verse) page--;
  return page;
}

/**
 * The verses from a place through the next so many pages; near the end of the text the last so
 * many. Backwards, the rest of the surah and of the surahs before it as many pages as are left.
 */
export function ahead(
  x: Phrases,
  c: Pick<Catalogue, 'pages'>,
  place: Ref,
  pages: number,
  backwards = false,
): [number, number][] {
  const v = verseOf(x, place);
  const page = pageOf(x, c, v);
  const all = c.pages.length;
  const end = x.surahs[place.s]! - 1;
  const left = page + pages - 1 - pageOf(x, c, end);
  const last = part(x, c.pages, Math.min(all, page + pages - 1))[1];
  if (backwards && left > 0) {
    const first = x.surahs[place.s - 1]!;
    const from = part(x, c.pages, Math.max(1, pageOf(x, c, first) - left))[0];
    return from < first
      ? [
          [v, end],
          [from, first - 1],
        ]
      : [[v, end]];
  }
  const near = page + pages - 1 > all && !backwards;
  return [[near ? part(x, c.pages, Math.max(1, all - pages + 1))[0] : v, last]];
}

/** Places of every rule in verses from one to another, several such together. */
export function placesIn(x: Phrases, verses: [number, number][]): number[] {
  const each = verses.map((v) => x.places(...v));
  return x.counts.map((_, rule) => each.reduce((n, places) => n + places[rule]!, 0));
}
