// Every passage: where a reader may start, where one may stop.
import { type Phrases, Split, SurahEnd } from './phrases.ts';

/**
 * First and last phrase of n passages. Those that begin with the phrase starts[s] are from[s] to
 * from[s + 1] - 1; neither they nor those before them end after ends[s].
 */
export interface All {
  n: number;
  as: Uint16Array;
  bs: Uint16Array;
  starts: Uint16Array;
  from: Uint32Array;
  ends: Uint16Array;
}

const kept = new WeakMap<Phrases, Map<string, All>>();

/** Every passage within the phrases from first to last, found once; see candidates in rank.go. */
export function all(x: Phrases, first: number, last: number, min: number, max: number): All {
  const key = `${first} ${last} ${min} ${max}`;
  const mine = kept.get(x) ?? new Map<string, All>();
  kept.set(x, mine);
  let out = mine.get(key);
  if (out) return out;
  const as: number[] = [];
  const bs: number[] = [];
  const starts: number[] = [];
  const from: number[] = [];
  const ends: number[] = [];
  for (let a = first; a <= last; a++) {
    if (!x.mayStart(a)) continue;
    const before = as.length;
    for (let b = a, words = 0, found = false; b <= last; b++) {
      words += x.words[b]!;
      if (words > max && found) break;
      const end = x.end[b]!;
      if (
        end !== Split &&
        (words >= min || (end === SurahEnd && (x.startsSurah(a) || 2 * words >= min)))
      ) {
        as.push(a);
        bs.push(b);
        found = true;
      }
      if (end === SurahEnd || (words > max && found)) break;
    }
    if (as.length === before) continue;
    starts.push(a);
    from.push(before);
    ends.push(Math.max(ends.at(-1) ?? 0, bs.at(-1)!));
  }
  if (mine.size > 8) mine.clear();
  out = {
    n: as.length,
    as: Uint16Array.from(as),
    bs: Uint16Array.from(bs),
    starts: Uint16Array.from(starts),
    from: Uint32Array.from([...from, as.length]),
    ends: Uint16Array.from(ends),
  };
  mine.set(key, out);
  return out;
}
