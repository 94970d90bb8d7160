// What a booklet is about: the verses of its juz, and the rules to find in them.
import { versesOf } from '../../../paper/booklet.ts';
import { keys, type Marks, marks } from '../../../paper/marks.ts';
import { rulesInOrder } from '../../../plan/ladder.ts';
import { basmala, verses } from '../../../text/data.ts';
import type { Rule } from '../../../types.ts';
import type { Job } from '../job.ts';
import type { Passage } from '../line.ts';

/** A rule that the booklet is for, with its short name where there are several. */
export interface BookletPencil {
  rule: Rule;
  key: string | undefined;
  places: number;
}

export interface Content {
  passage: Passage;
  /** Places of every rule in the juz, by its index. */
  totals: Map<number, number>;
  pencils: BookletPencil[];
  /** Rules that were asked for and have no place in the juz. */
  without: Rule[];
  found: Marks;
  /** Short names of the rules, by their index. */
  keys: Map<number, string>;
}

export async function contentOf(job: Job): Promise<Content> {
  const { c, learnt } = job;
  const { booklet } = job.options;
  const { from, to } = versesOf(c, booklet);
  const [vs, opening] = await Promise.all([verses(c, from, to), basmala(c, from, to)]);
  await job.step?.(0);
  const all = rulesInOrder(c).map((r) => c.rules.indexOf(r));
  const { totals } = marks(vs, all);
  await job.step?.(0);
  const ids = booklet.rules ?? learnt.map((r) => r.id);
  const asked = all.filter((r) => ids.includes(c.rules[r]!.id));
  const found = marks(
    vs,
    asked.filter((r) => totals.get(r)! > 0),
  );
  const short = keys(found);
  return {
    passage: { verses: vs, basmala: opening },
    totals,
    pencils: [...found.totals].map(([r, places]) => ({
      rule: c.rules[r]!,
      key: short.get(r),
      places,
    })),
    without: asked.filter((r) => !totals.get(r)).map((r) => c.rules[r]!),
    found,
    keys: short,
  };
}
