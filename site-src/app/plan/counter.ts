// Answers all that a query needs of a passage in a few additions, by running sums over the phrases.
import type { Phrases } from './phrases.ts';

/** Counts the places of a set of rules together. */
export class Channel {
  private readonly sums: Int32Array;
  private readonly atStop: Int16Array;
  private readonly atFrom: Int16Array;

  constructor(private readonly x: Phrases, rules: number[]) {
    const sums = new Int32Array(x.n + 1), stop = new Int16Array(x.pauses), from = new Int16Array(x.pauses);
    for (const r of rules) {
      const row = x.counts[r]!, s = x.atStop[r]!, f = x.atFrom[r]!;
      for (let i = 0; i < x.n; i++) sums[i + 1]! += row[i]!;
      for (let i = 0; i < x.pauses; i++) {
        stop[i]! += s[i]!;
        from[i]! += f[i]!;
      }
    }
    for (let i = 0; i < x.n; i++) sums[i + 1]! += sums[i]!;
    this.sums = sums;
    this.atStop = stop;
    this.atFrom = from;
  }

  /** Places in the phrases from a to b, both included. */
  places(a: number, b: number): number {
    const k = this.x.pause[b]!, j = a ? this.x.pause[a - 1]! : -1;
    return this.sums[b + 1]! - this.sums[a]! + (k < 0 ? 0 : this.atStop[k]!) + (j < 0 ? 0 : this.atFrom[j]!);
  }
}

/** The channel of all rules, made once for an index. */
const everything = new WeakMap<Phrases, Channel>();

export function allOf(x: Phrases): Channel {
  let c = everything.get(x);
  if (!c) everything.set(x, c = new Channel(x, x.counts.map((_, r) => r)));
  return c;
}
