// Lines for a rule near the learner before lines elsewhere.
import type { Ref } from '../types.ts';
import type { Course } from './course.ts';
import { juzOf, part } from './places.ts';
import { AsWanted, choose, Fewer, type Ranking } from './rank.ts';
import type { Query } from './score.ts';

/**
 * The best lines in the juz of the place; in the whole text where that has none as wanted, unless
 * the most it has are as many, or one fewer, than the most there are anywhere.
 */
export function nearest({ x, c }: Course, place: Ref, q: Query): Ranking {
  const [from, to] = part(x, c.juz, juzOf(c, place) + 1);
  const near = choose(x, { ...q, from, to });
  if (near.how === AsWanted) return near;
  const all = choose(x, q);
  if (near.how <= Math.max(all.how, Fewer) && near.least + 1 >= all.least) return near;
  const best = all.passages[0];
  const verse = best && x.verse[best.a]!;
  return { ...all, beyond: verse !== undefined && (verse < from || verse > to) };
}
