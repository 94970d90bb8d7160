// Which events hold for a choice of stops. Nothing of a rule is decided here: the file says when
// each event holds, and generator/internal/recite/testdata/holds.json what that means.
import { Always, type Event, Join, type Place, type Verse } from '../types.ts';

/**
 * Where the reader stops. Default: at verse ends. A surah's end and the end of the lines are always
 * stops.
 */
export class Stops {
  private readonly own = new Map<string, boolean>();

  constructor(
    private readonly verses: Verse[],
    moved: [number, number, boolean][] = [],
  ) {
    for (const [v, w, stop] of moved) this.set(v, w, stop);
  }

  private ends(v: number, w: number) {
    return w === this.verses[v]!.words.length - 1;
  }

  /**
   * Whether the reader may choose at this word: a pause sign, or a verse end with a verse of the
   * same surah after it.
   */
  movable(v: number, w: number): boolean {
    const next = this.verses[v + 1];
    if (this.ends(v, w)) return !!next && next.s === this.verses[v]!.s;
    return this.verses[v]!.words[w]!.pause !== 0;
  }

  after(v: number, w: number): boolean {
    return this.own.get(`${v}.${w}`) ?? this.ends(v, w);
  }

  startsAt(v: number, w: number): boolean {
    if (w > 0) return this.after(v, w - 1);
    return v === 0 || this.after(v - 1, this.verses[v - 1]!.words.length - 1);
  }

  set(v: number, w: number, stop: boolean) {
    if (this.verses[v]?.words[w] && this.movable(v, w)) this.own.set(`${v}.${w}`, stop);
  }

  holds(v: number, e: Event): boolean {
    const stop = e.before ? this.startsAt(v, e.w) : this.after(v, e.w);
    return e.when === Always || stop === (e.when !== Join);
  }

  /** The choices that differ from the default, for keeping. */
  moved(): [number, number, boolean][] {
    return [...this.own]
      .map(([k, stop]) => [...k.split('.').map(Number), stop] as [number, number, boolean])
      .filter(([v, w, stop]) => stop !== this.ends(v, w));
  }
}

/** The letter that causes an event, which may stand in the verse before or after. */
export function causeOf(verses: Verse[], v: number, e: Event): Place | undefined {
  if (e.cl < 0) return undefined;
  let w = e.w + e.cw;
  if (w < 0) {
    v--;
    w = (verses[v]?.words.length ?? 0) - 1;
  } else if (w >= verses[v]!.words.length) {
    v++;
    w = 0;
  }
  return verses[v]?.words[w]?.letters[e.cl] ? { v, w, l: e.cl } : undefined;
}
