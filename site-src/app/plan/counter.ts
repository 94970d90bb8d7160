// Counts the places of some rules together. What is asked of many passages is summed up beforehand; what is asked of few
// is counted when it is asked.
import type { Phrases } from './phrases.ts';

/** Running sums over the phrases: a passage's places in a few additions. */
export class Channel {
  private readonly sums: Int32Array;
  private readonly stops: Int8Array[];
  private readonly starts: Int8Array[];
  private readonly more: number;

  constructor(private readonly x: Phrases, rules: number[]) {
    const sums = this.sums = new Int32Array(x.n + 1), inPhrase = together(x, rules);
    for (let i = 0, n = 0; i < inPhrase.length; i++) sums[i + 1] = n += inPhrase[i]!;
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
    const k = this.x.pause[b]!, j = a ? this.x.pause[a - 1]! : -1;
    return this.sums[b + 1]! - this.sums[a]! + (k < 0 ? 0 : sum(this.stops, k)) + (j < 0 ? 0 : sum(this.starts, j));
  }
}

function sum(rows: ArrayLike<number>[], i: number): number {
  let n = 0;
  for (let r = 0; r < rows.length; r++) n += rows[r]![i]!;
  return n;
}

/** Places of some rules together in each phrase, four phrases in one addition: no phrase has more than 255 (encode.go). */
function together(x: Phrases, rules: number[]): Uint8Array {
  if (rules.length === 1) return x.counts[rules[0]!]!;
  const lanes = new Uint32Array(Math.ceil(x.n / 4)), row = new Uint8Array(4 * lanes.length), fours = new Uint32Array(row.buffer);
  for (const r of rules) {
    row.set(x.counts[r]!);
    for (let i = 0; i < lanes.length; i++) lanes[i]! += fours[i]!;
  }
  return new Uint8Array(lanes.buffer, 0, x.n);
}

const totals = new WeakMap<Phrases, Uint8Array>();

/** Places of all rules in each phrase, found once for an index. */
export function total(x: Phrases): Uint8Array {
  let t = totals.get(x);
  if (!t) totals.set(x, t = together(x, every(x)));
  return t;
}

/** Every rule of an index. */
export const every = (x: Phrases) => x.counts.map((_, r) => r);

const UNKNOWN = 0x7fff;

/** Places of some rules together in each phrase, or what a pause changes in them, summed up when it is first met. */
class Lazy {
  private readonly kept: Int16Array;
  private readonly mine: ArrayLike<number>[];

  constructor(rows: (ArrayLike<number> | undefined)[], rules: number[], n: number) {
    this.kept = new Int16Array(n).fill(UNKNOWN);
    this.mine = rules.flatMap((r) => rows[r] ? [rows[r]] : []);
  }

  at(i: number): number {
    const n = this.kept[i]!;
    return n === UNKNOWN ? this.kept[i] = sum(this.mine, i) : n;
  }
}

/** All that a passage has of every rule. */
export class Tally {
  private readonly total: Uint8Array;
  private readonly some: Lazy[]; // in phrases, at stops, at starts: of the rules not yet taught, or of the others if they are fewer
  private readonly all: Lazy[];
  private readonly later: boolean;

  /** readable are the rules that the child knows or is to mark. */
  constructor(private readonly x: Phrases, readable: number[], private readonly due: number[]) {
    const rules = every(x), later = rules.filter((r) => !readable.includes(r));
    this.total = total(x);
    this.later = 2 * later.length <= rules.length;
    const mine = this.later ? later : rules.filter((r) => readable.includes(r));
    this.some = [new Lazy(x.counts, mine, x.n), new Lazy(x.atStop, mine, x.pauses), new Lazy(x.atFrom, mine, x.pauses)];
    this.all = [new Lazy(x.atStop, rules, x.pauses), new Lazy(x.atFrom, rules, x.pauses)];
  }

  /** Of the phrases from a to b, both included: places of all rules, of the readable ones, and how many due rules have one. */
  of(a: number, b: number): { total: number; readable: number; due: number } {
    const { x, some, all } = this, k = x.pause[b]!, j = a ? x.pause[a - 1]! : -1;
    let total = (k < 0 ? 0 : all[0]!.at(k)) + (j < 0 ? 0 : all[1]!.at(j)), part = (k < 0 ? 0 : some[1]!.at(k)) + (j < 0 ? 0 : some[2]!.at(j)), due = 0;
    for (let p = a; p <= b; p++) {
      total += this.total[p]!;
      part += some[0]!.at(p);
    }
    for (const r of this.due) if (x.has(r, a, b)) due++;
    return { total, readable: this.later ? total - part : part, due };
  }
}
