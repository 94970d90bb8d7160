// The passage index: the phrases of the whole text and the places of every rule in each. Its bytes
// are described in generator/internal/passage/encode.go. A place counts here as the child marks it:
// written, under the default stops.

/** What comes after a phrase: no stop at all, a pause sign, a verse's end, a surah's end. */
export const Split = 0;
export const PauseEnd = 1;
export const VerseEnd = 2;
export const SurahEnd = 3;

export class Phrases {
  readonly n: number;
  readonly pauses: number;
  readonly words: Uint8Array;
  readonly letters: Uint8Array;
  readonly end: Uint8Array;
  /**
   * [rule][phrase]: places; and [rule][pause]: what stopping at it, or starting after it, adds,
   * where it ever adds anything.
   */
  readonly counts: Uint8Array[] = [];
  readonly atStop: (Int8Array | undefined)[] = [];
  readonly atFrom: (Int8Array | undefined)[] = [];
  /**
   * Of each phrase: its verse (from 0 over the whole text), its first word in the verse, its pause
   * or -1.
   */
  readonly verse: Int32Array;
  readonly first: Int32Array;
  readonly pause: Int32Array;
  /** Words and letters of the whole text before each phrase, one entry more than phrases. */
  readonly at: Int32Array;
  readonly lettersAt: Int32Array;
  /**
   * The phrase with which each verse begins, one entry more than verses; the verse with which each
   * surah begins.
   */
  readonly of: number[] = [0];
  readonly surahs: number[] = [0];

  constructor(b: Uint8Array) {
    const view = new DataView(b.buffer, b.byteOffset, b.byteLength);
    const head = 10;
    if (b.length < head || String.fromCharCode(...b.subarray(0, 4)) !== 'SPI2')
      throw new Error('no passage index');
    const n = view.getUint16(4, true);
    const k = view.getUint16(6, true);
    const rules = b[8]!;
    const changes = b.subarray(head + 3 * n, head + 3 * n + rules);
    const kept = changes.reduce((all, c) => all + (c & 1) + (c >> 1), 0);
    if (b.length !== head + 3 * n + rules * (n + 1) + kept * k)
      throw new Error('passage index: length');
    let at = head;
    const take = (size: number) => b.subarray(at, (at += size));
    this.n = n;
    this.pauses = k;
    this.words = take(n);
    this.letters = take(n);
    this.end = take(n);
    take(rules);
    for (let r = 0; r < rules; r++) this.counts.push(take(n));
    for (const [bit, rows] of [
      [1, this.atStop],
      [2, this.atFrom],
    ] as const) {
      for (let r = 0; r < rules; r++)
        rows.push(
          changes[r]! & bit ? new Int8Array(b.buffer, b.byteOffset + (at += k) - k, k) : undefined,
        );
    }
    this.verse = new Int32Array(n);
    this.first = new Int32Array(n);
    this.pause = new Int32Array(n).fill(-1);
    this.at = new Int32Array(n + 1);
    this.lettersAt = new Int32Array(n + 1);
    this.derive();
  }

  private derive() {
    let verse = 0;
    let first = 0;
    let pauses = 0;
    for (let i = 0; i < this.n; i++) {
      const w = this.words[i]!;
      const end = this.end[i]!;
      this.verse[i] = verse;
      this.first[i] = first;
      this.at[i + 1] = this.at[i]! + w;
      this.lettersAt[i + 1] = this.lettersAt[i]! + this.letters[i]!;
      first += w;
      if (end === PauseEnd) this.pause[i] = pauses++;
      if (end < VerseEnd) continue;
      verse++;
      first = 0;
      this.of.push(i + 1);
      if (end === SurahEnd) this.surahs.push(verse);
    }
    if (pauses !== this.pauses) throw new Error('passage index: pauses');
  }

  mayStart(p: number) {
    return p === 0 || this.end[p - 1] !== Split;
  }
  startsSurah(p: number) {
    return p === 0 || this.end[p - 1] === SurahEnd;
  }

  /** Places of a rule in the passage of the phrases from a to b, both included. */
  count(rule: number, a: number, b: number): number {
    const row = this.counts[rule]!;
    const k = this.pause[b]!;
    const j = a ? this.pause[a - 1]! : -1;
    let n =
      (k < 0 ? 0 : (this.atStop[rule]?.[k] ?? 0)) + (j < 0 ? 0 : (this.atFrom[rule]?.[j] ?? 0));
    for (let p = a; p <= b; p++) n += row[p]!;
    return n;
  }

  /**
   * Whether a rule has a place there; counted only where stopping or starting changes its places.
   */
  has(rule: number, a: number, b: number): boolean {
    const row = this.counts[rule]!;
    const k = this.pause[b]!;
    const j = a ? this.pause[a - 1]! : -1;
    if ((k >= 0 && this.atStop[rule]?.[k]) || (j >= 0 && this.atFrom[rule]?.[j]))
      return this.count(rule, a, b) > 0;
    for (let p = a; p <= b; p++) if (row[p]) return true;
    return false;
  }

  /** Places of a rule in the whole text, counted until there are most or more. */
  upTo(rule: number, most: number): number {
    const row = this.counts[rule]!;
    let n = 0;
    for (let p = 0; p < row.length && n < most; p++) n += row[p]!;
    return n;
  }

  /** Places of every rule in the verses from first to last, both included. */
  places(first: number, last: number): number[] {
    return this.counts.map((_, r) => this.count(r, this.of[first]!, this.of[last + 1]! - 1));
  }
}
