// Counts the places of some rules together. What is asked of many passages is summed up beforehand;
// what is asked of few is counted when it is asked.
import type { Phrases } from './phrases.ts';

/** Running sums over the phrases: a passage's places in a few additions. */
export class Channel {
  private readonly sums: Int32Array;
  private readonly stops: Int8Array[];
  private readonly starts: Int8Array[];
  private readonly more: number;

  constructor(
    private readonly x: Phrases,
    rules: number[],
  ) {
    const sums = (this.sums = new Int32Array(x.n + 1));
    for (const r of rules)
      for (let i = 0, row = x.counts[r]!; i < x.n; i++) sums[i + 1]! += row[i]!;
    for (let i = 0; i < x.n; i++) sums[i + 1]! += sums[i]!;
    this.stops = rules.flatMap((r) => x.atStop[r] ?? []);
    this.starts = rules.flatMap((r) => x.atFrom[r] ?? []);
    this.more = [...this.stops, ...this.starts].reduce((n, row) => n + Math.max(0, ...row), 0);
  }

  /** No passage that begins with phrase a and ends with b or before has more places. */
  most(a: number, b: number): number {
    return this.sums[b + 1]! - this.sums[a]! + this.more;
  }

  /** Places in the phrases from a to b, both included. */
  places(a: number, b: number): number {
    const k = this.x.pause[b]!;
    const j = a ? this.x.pause[a - 1]! : -1;
    return (
      this.sums[b + 1]! -
      this.sums[a]! +
      (k < 0 ? 0 : sum(this.stops, k)) +
      (j < 0 ? 0 : sum(this.starts, j))
    );
  }
}

function sum(rows: ArrayLike<number>[], i: number): number {
  let n = 0;
  for (let r = 0; r < rows.length; r++) n += rows[r]![i]!;
  return n;
}

const UNKNOWN = 0x7fff;

/**
 * Places of some rules together in each phrase, or what a pause changes in them, summed up when it
 * is first met.
 */
class Lazy {
  private readonly kept: Int16Array;
  private readonly mine: ArrayLike<number>[];

  constructor(rows: (ArrayLike<number> | undefined)[], rules: number[], n: number) {
    this.kept = new Int16Array(n).fill(UNKNOWN);
    this.mine = rules.flatMap((r) => (rows[r] ? [rows[r]] : []));
  }

  at(i: number): number {
    const n = this.kept[i]!;
    return n === UNKNOWN ? (this.kept[i] = sum(this.mine, i)) : n;
  }
}

/** Places of some rules in passages, each phrase and each pause counted when it is first met. */
class Counted {
  private readonly inPhrase: Lazy;
  private readonly atStop: Lazy;
  private readonly atFrom: Lazy;

  constructor(
    private readonly x: Phrases,
    rules: number[],
  ) {
    this.inPhrase = new Lazy(x.counts, rules, x.n);
    this.atStop = new Lazy(x.atStop, rules, x.pauses);
    this.atFrom = new Lazy(x.atFrom, rules, x.pauses);
  }

  places(a: number, b: number): number {
    const k = this.x.pause[b]!;
    const j = a ? this.x.pause[a - 1]! : -1;
    let n = (k < 0 ? 0 : this.atStop.at(k)) + (j < 0 ? 0 : this.atFrom.at(j));
    for (let p = a; p <= b; p++) n += this.inPhrase.at(p);
    return n;
  }
}

/** Of all rules, kept for an index: they are the same for every child. */
const ofAll = new WeakMap<Phrases, Counted>();

/** All that a passage has of every rule. */
export class Tally {
  private readonly all: Counted;
  private readonly part: Counted; // of the rules not yet taught, or of the others if they are fewer
  private readonly later: boolean;

  /** readable are the rules that the child knows or is to mark. */
  constructor(
    private readonly x: Phrases,
    readable: number[],
    private readonly due: number[],
  ) {
    const rules = x.counts.map((_, r) => r);
    const later = rules.filter((r) => !readable.includes(r));
    this.all = ofAll.get(x) ?? new Counted(x, rules);
    ofAll.set(x, this.all);
    this.later = 2 * later.length <= rules.length;
    this.part = new Counted(x, this.later ? later : rules.filter((r) => readable.includes(r)));
  }

  /**
   * Of the phrases from a to b, both included: places of all rules, of the readable ones, and how
   * many due rules have one.
   */
  of(a: number, b: number): { total: number; readable: number; due: number } {
    const total = this.all.places(a, b);
    const part = this.part.places(a, b);
    return {
      total,
      readable: this.later ? total - part : part,
      due: this.due.filter((r) => this.x.has(r, a, b)).length,
    };
  }
}
