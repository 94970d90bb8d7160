// Lines that a sheet could have instead, where its own have too few places of the rule to find.
import { linesHash } from '../../share/link.ts';
import { loadCourse, reader } from '../../planner.ts';
import type { Lines } from '../../types.ts';
import type { Layout } from './layout.ts';

/** Fewer places than this are too few for a sheet. */
const FEW = 3;

/** Lines that are offered. */
const OFFERS = 3;

export interface Offer {
  lines: Lines;
  places: number;
}

/** The rule to find and its places, where a sheet that was laid out has too few of them. */
export function fewOf(l: Layout | undefined): { id: string; name: string; n: number } | undefined {
  if (l?.sheet !== 'lines' || !l.options.rule) return undefined;
  const { places, name } = l.heads.pencils[0]!;
  return places < FEW ? { id: l.options.rule, name, n: places } : undefined;
}

/**
 * The planner's next lines for the rule that have more places of it, the best first; none where its
 * index cannot be had.
 */
export async function offersFor(l: Layout): Promise<Offer[]> {
  const few = fewOf(l);
  if (!few || !(await loadCourse().catch(() => undefined))) return [];
  const child = reader()!;
  const rule = l.c.rules.findIndex((r) => r.id === few.id);
  const { passages } = child.lines(child.practise(rule), { best: OFFERS });
  const now = linesHash({ rule: few.id, from: l.options.from, to: l.options.to });
  return passages
    .map((p) => ({ lines: child.toLines(p, few.id), places: p.focus }))
    .filter((x) => x.places > few.n && linesHash(x.lines) !== now);
}
