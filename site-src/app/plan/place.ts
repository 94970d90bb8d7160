// Where the learner goes on reading after a session.
import type { Catalogue, Learner, Lines, Ref } from '../types.ts';
import type { Child } from './child.ts';
import { Order } from './order.ts';
import { juzOf, refOf, verseOf } from './places.ts';
import { VerseEnd } from './phrases.ts';

/** Words ahead of the place within which lines are read on the way. */
const ON_THE_WAY = 600;

/**
 * The verse after the lines, or the one in which they end. At the end of a surah the next is the
 * one after it, or the one before for who reads backwards; undefined where there is none.
 */
export function after(
  c: Pick<Catalogue, 'surahs'>,
  to: Ref,
  direction: Learner['direction'] = 'forwards',
): Ref | undefined {
  if (to.w !== undefined) return { s: to.s, a: to.a };
  if (to.a < c.surahs[to.s - 1]!.count) return { s: to.s, a: to.a + 1 };
  const s = to.s + (direction === 'backwards' ? -1 : 1);
  return c.surahs[s - 1] && { s, a: 1 };
}

/**
 * The place after lines. It stays where it is when they were elsewhere: before it, or far ahead, as
 * the learner reads. Who reads backwards begins with the last surah again after the first. For who
 * reads on, at the end of the text and where the next juz was read before, the place goes back to a
 * juz that was not: children begin with the last one and go back a juz at a time (common practice).
 */
export function moved(c: Child, lines: Pick<Lines, 'from' | 'to'>): Ref {
  const { x, c: cat } = c.course;
  const [a, b] = c.phrases(lines);
  const { place: was, direction } = c.learner;
  const order = new Order(x, c.place, c.backwards);
  const ends = order.on(b) + x.words[b]!;
  if (ends <= 0 || order.on(a) >= ON_THE_WAY) return was;
  const last = refOf(x, x.verse[b]!);
  const next = x.end[b]! < VerseEnd ? last : after(cat, last, direction);
  if (c.backwards) return next ?? { s: cat.surahs.length, a: 1 };
  const here = juzOf(cat, lines.from);
  if (next && (juzOf(cat, next) === here || !begun(c, juzOf(cat, next)))) return next;
  let juz = Math.max(0, here - 1);
  while (juz > 0 && begun(c, juz)) juz--;
  return startOf(cat, juz);
}

/** The verse with which a juz, from 0, begins. */
const startOf = (c: Pick<Catalogue, 'juz'>, juz: number): Ref => ({
  s: c.juz[juz]![0],
  a: c.juz[juz]![1],
});

/** Whether lines near the beginning of a juz were read. Others in it may have been for a rule. */
function begun(c: Child, juz: number): boolean {
  const { x, c: cat } = c.course;
  if (juz >= cat.juz.length) return false;
  const start = x.at[x.of[verseOf(x, startOf(cat, juz))]!]!;
  return c.sessions.some((s) => {
    const words = x.at[c.phrases(s)[0]]! - start;
    return words >= 0 && words < ON_THE_WAY && juzOf(cat, s.from) === juz;
  });
}

/** Whether moved has brought the place back a juz, and nothing was read there yet. */
export function wentBack(c: Child): boolean {
  const { place } = c.learner;
  const juz = juzOf(c.course.c, place);
  const start = startOf(c.course.c, juz);
  if (c.backwards || place.s !== start.s || place.a !== start.a) return false;
  return begun(c, juz + 1) && !begun(c, juz);
}
