// The order in which a child reads: on through the text, or surah after surah backwards, each of
// them forwards.
import type { Phrases } from './phrases.ts';
import { surahOf } from './places.ts';

/** Words read before each phrase by a child who reads backwards, kept for an index. */
const kept = new WeakMap<Phrases, Int32Array>();

function backwards(x: Phrases): Int32Array {
  let out = kept.get(x);
  if (out) return out;
  kept.set(x, (out = new Int32Array(x.n)));
  const all = x.at[x.n]!;
  for (let s = 0; s + 1 < x.surahs.length; s++) {
    const first = x.of[x.surahs[s]!]!;
    const end = x.of[x.surahs[s + 1]!]!;
    for (let p = first; p < end; p++) out[p] = all - x.at[end]! + x.at[p]! - x.at[first]!;
  }
  return out;
}

export class Order {
  private readonly read: Int32Array;
  private readonly here: number;

  /** place is a verse. */
  constructor(
    private readonly x: Phrases,
    place: number,
    private readonly back = false,
  ) {
    this.read = back ? backwards(x) : x.at;
    this.here = this.read[x.of[place]!]!;
  }

  /** Words read from the place to the beginning of phrase a; negative before the place. */
  on(a: number): number {
    return this.read[a]! - this.here;
  }

  /** The least and the most that on can be of the phrases from a to b, or less and more. */
  between(a: number, b: number): [number, number] {
    if (!this.back || this.surah(a) === this.surah(b)) return [this.on(a), this.on(b)];
    const { x } = this;
    const all = x.at[x.n]! - this.here;
    const first = x.of[x.surahs[this.surah(a)]!]!;
    const end = x.of[x.surahs[this.surah(b) + 1]!]!;
    return [all - x.at[end]!, all - x.at[first]!];
  }

  /** The surah of a phrase, from 0. */
  private surah(p: number): number {
    return surahOf(this.x, this.x.verse[p]!);
  }
}
