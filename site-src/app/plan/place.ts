// Where the learner goes on reading after a session.
import type { Catalogue, Lines, Ref } from '../types.ts';
import type { Child } from './child.ts';
import { juzOf, refOf } from './places.ts';
import { VerseEnd } from './phrases.ts';

/** Words ahead of the place within which lines are read on the way. */
const ON_THE_WAY = 600;

/** The verse after the lines, or the one in which they end; undefined at the end of the text. */
export function after(c: Pick<Catalogue, 'surahs'>, to: Ref): Ref | undefined {
  if (to.w !== undefined) return { s: to.s, a: to.a };
  if (to.a < c.surahs[to.s - 1]!.count) return { s: to.s, a: to.a + 1 };
  return to.s < c.surahs.length ? { s: to.s + 1, a: 1 } : undefined;
}

/**
 * The place after lines. It stays where it is when they were elsewhere: before it, or far ahead. At
 * the end of the text, and where the next juz was read before, the place goes to the juz before
 * those read: children begin with the last one and go back a juz at a time (common practice).
 */
export function moved(c: Child, lines: Pick<Lines, 'from' | 'to'>): Ref {
  const { x, c: cat } = c.course;
  const [a, b] = c.phrases(lines);
  const here = x.at[x.of[c.place]!]!;
  const was = c.learner.place;
  if (x.at[b + 1]! <= here || x.at[a]! - here >= ON_THE_WAY) return was;
  const next = x.end[b]! < VerseEnd ? refOf(x, x.verse[b]!) : after(cat, refOf(x, x.verse[b]!));
  const read = [...c.sessions.map((s) => juzOf(cat, s.from)), juzOf(cat, lines.from)];
  const back = Math.max(0, Math.min(...read) - 1);
  if (next && (juzOf(cat, next) === juzOf(cat, lines.from) || !read.includes(juzOf(cat, next))))
    return next;
  return { s: cat.juz[back]![0], a: cat.juz[back]![1] };
}
