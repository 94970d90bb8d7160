// Marks kept by version 1 of the database and of backup files count letters in another way: in 277
// words one letter was both a hamza and the long alif after it. There a mark on a later letter
// moves on by one; a mark on the letter itself is on the alif for a rule of long vowels, and on the
// hamza for any other.
import type { Mark, Ref } from '../types.ts';
import { VERSE_COUNTS } from './surahs.ts';

// The words, in order: verses after the verse before (the first: after 1:1), word, letter, from 0.
const PLACES = `
10.9.4 4.7.2 26.4.1 28.11.2 24.5.3 8.5.2 8.63.2 12.27.2 4.21.2 8.17.2 4.15.2 34.40.1 13.14.2
23.21.2 1.9.2 16.50.3 2.23.2 1.2.3 8.20.2 4.23.2 16.25.1 16.17.2 2.32.2 42.6.3 23.17.3 4.40.1
7.8.3 2.4.2 19.13.2 8.10.2 29.3.2 4.26.2 27.19.2 3.6.2 4.27.2 24.18.2 14.8.1 48.10.2 1.6.2 20.23.2
8.1.1 7.8.3 3.41.3 42.2.2 0.6.2 15.9.3 2.23.2 26.21.2 19.40.2 22.15.2 6.31.2 8.64.2 28.11.2 6.20.2
31.50.2 46.7.2 14.19.2 9.2.2 10.24.2 11.14.2 16.15.3 5.13.2 1.10.2 1.41.1 6.2.2 4.11.2 4.6.3
13.6.2 8.3.1 16.23.3 26.8.1 6.1.1 15.23.2 13.8.3 13.14.2 89.4.2 9.7.2 13.34.2 5.2.2 31.11.3
68.16.2 19.10.2 7.8.2 1.10.2 10.7.2 9.19.2 0.25.2 6.6.2 1.7.2 24.28.3 5.37.3 25.6.2 13.6.2 22.20.2
1.11.1 18.40.2 40.6.2 3.12.1 32.3.1 2.8.2 24.5.2 3.8.3 3.4.2 81.3.1 0.7.2 55.7.2 1.11.2 1.23.3
4.8.2 16.1.2 44.16.3 8.23.2 4.21.2 1.21.1 1.24.1 11.10.3 11.13.2 8.6.2 12.5.2 2.17.1 22.10.2
100.3.1 2.3.1 8.10.1 25.13.1 1.12.1 1.10.1 9.6.3 8.15.2 11.13.2 19.3.3 5.13.1 2.12.1 2.21.1
10.15.1 28.6.2 2.4.2 13.6.2 13.10.2 3.4.3 9.2.2 2.6.3 24.9.3 14.4.3 0.18.3 2.4.1 11.7.2 32.10.2
12.6.1 45.4.1 212.6.1 62.4.1 11.9.2 1.14.1 130.20.3 4.9.3 83.8.2 10.3.1 3.8.2 41.4.3 46.20.2
12.7.3 4.3.2 1.14.3 4.9.3 13.13.3 22.45.2 3.73.2 88.3.1 56.2.2 2.2.2 1.3.1 17.5.2 19.3.1 18.3.1
18.5.1 19.5.1 14.2.2 2.3.1 16.3.1 40.6.3 1.4.3 1.7.2 47.8.1 14.4.2 20.12.1 38.18.2 39.10.3 7.5.2
6.2.2 10.8.1 15.12.2 4.17.1 3.15.2 9.10.2 8.8.1 6.9.2 14.9.2 12.7.2 9.6.2 5.17.1 1.11.1 1.11.1
1.18.1 4.24.2 9.12.1 27.6.3 27.15.1 16.2.1 13.15.1 9.1.1 9.8.1 7.13.2 8.6.2 28.9.3 17.13.2 7.11.3
1.25.1 10.15.1 2.10.3 227.1.1 12.3.2 4.2.2 26.3.2 11.3.2 10.3.2 7.2.2 51.1.2 2.5.2 90.8.2 17.7.2
16.23.1 3.9.3 7.12.1 41.2.2 21.7.2 4.12.2 16.2.1 33.5.3 9.14.2 15.6.2 22.3.2 21.4.2 0.19.2 13.11.1
55.8.3 21.3.2 66.2.2 29.4.1 10.13.1 51.7.2 272.1.2 2.4.3 30.1.2 152.2.2 26.2.2 9.3.3 3.0.1 47.2.3
14.10.2 3.26.2 31.6.2 3.11.2 27.11.2 7.12.2 56.23.2 85.3.2 152.8.2 55.3.1 37.4.2 24.1.2 67.2.2
93.1.2 5.3.2 228.0.3 106.2.2 12.0.3
`;
let places: Map<string, number> | undefined;

function table() {
  if (places) return places;
  places = new Map();
  let verse = 0;
  for (const x of PLACES.trim().split(/\s+/)) {
    const [by, w, l] = x.split('.').map(Number) as [number, number, number];
    places.set(`${(verse += by)}.${w}`, l);
  }
  return places;
}

/** The first verse of the lines counted through the whole text, from 0. */
const ordinal = (r: Ref) => VERSE_COUNTS.slice(0, r.s - 1).reduce((n, x) => n + x, r.a - 1);

/** The marks of version 1 on lines from `from`, with letters counted as now. */
export function recount(rule: string, from: Ref, marks: Mark[]): Mark[] {
  const first = marks.length ? ordinal(from) : 0;
  return marks.map((m) => {
    const at = table().get(`${first + m.v}.${m.w + (m.v ? 0 : (from.w ?? 0))}`);
    return at === undefined || m.l < at || (m.l === at && !rule.startsWith('madd-'))
      ? m
      : { ...m, l: m.l + 1 };
  });
}
