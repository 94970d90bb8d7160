// Every passage: where a reader may start, where one may stop. They are not listed, only numbered:
// those that begin with the same phrase end at stops in a row.
import { type Phrases, Split, SurahEnd } from './phrases.ts';

/**
 * n passages. Those that begin with the phrase starts[s] are from[s] to from[s + 1] - 1, and number i
 * of them ends with the phrase stops[i + shift[s]]; neither they nor those before them end after
 * ends[s].
 */
export interface All {
  n: number;
  starts: Uint16Array;
  from: Uint32Array;
  shift: Int32Array;
  ends: Uint16Array;
  stops: Uint16Array;
}

/** The last phrase of passage i, one of those of start s. */
export const endOf = (l: All, s: number, i: number) => l.stops[i + l.shift[s]!]!;

/** The start of passage i. */
export function startOf({ from, starts }: All, i: number): number {
  let low = 0;
  let high = starts.length;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (from[middle]! <= i) low = middle;
    else high = middle;
  }
  return low;
}

const kept = new WeakMap<Phrases, Map<string, All>>();

/** Every passage within the phrases from first to last, found once; see candidates in rank.go. */
export function all(x: Phrases, first: number, last: number, min: number, max: number): All {
  const key = `${first} ${last} ${min} ${max}`;
  const mine = kept.get(x) ?? new Map<string, All>();
  kept.set(x, mine);
  let out = mine.get(key);
  if (out) return out;
  if (mine.size > 8) mine.clear();
  mine.set(key, (out = find(x, first, last, min, max)));
  return out;
}

function stopsOf({ end }: Phrases, first: number, last: number): Uint16Array {
  const stops = new Uint16Array(last - first + 1);
  let n = 0;
  for (let b = first; b <= last; b++) if (end[b] !== Split) stops[n++] = b;
  return stops.subarray(0, n);
}

/** The stops at which passages may end lie further on for each start: four hands move on together. */
function find(x: Phrases, first: number, last: number, min: number, max: number): All {
  const { at, end } = x;
  const stops = stopsOf(x, first, last);
  const m = stops.length;
  const starts = new Uint16Array(m + 1);
  const from = new Uint32Array(m + 2);
  const shift = new Int32Array(m + 1);
  const ends = new Uint16Array(m + 1);
  let n = 0;
  let s = 0;
  let low = 0; // the first stop with enough words
  let high = -1; // the last one without too many
  let surah = 0; // the last one within the surah
  for (let a = first; a <= last; a++) {
    if (!x.mayStart(a)) continue;
    const least = at[a]! + min;
    const most = at[a]! + max;
    while (low < m && at[stops[low]! + 1]! < least) low++;
    while (high + 1 < m && at[stops[high + 1]! + 1]! <= most) high++;
    while (surah + 1 < m && (stops[surah]! < a || end[stops[surah]!] !== SurahEnd)) surah++;
    let begin = low;
    if (low === m || low > surah) {
      const b = stops[surah]!;
      const words = at[b + 1]! - at[a]!;
      if (b < a || end[b] !== SurahEnd || !(x.startsSurah(a) || 2 * words >= min)) continue;
      begin = surah;
    }
    const final = Math.max(begin, Math.min(high, surah));
    starts[s] = a;
    from[s] = n;
    shift[s] = begin - n;
    ends[s] = stops[final]!;
    n += final + 1 - begin;
    from[++s] = n;
  }
  return {
    n,
    starts: starts.subarray(0, s),
    from: from.subarray(0, s + 1),
    shift: shift.subarray(0, s),
    ends: ends.subarray(0, s),
    stops,
  };
}
