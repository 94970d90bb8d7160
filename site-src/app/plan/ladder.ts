// The rules in the order of the lessons that teach them.
import type { Catalogue, Rule } from '../types.ts';
import { units } from './units.ts';

export const rulesInOrder = (c: Pick<Catalogue, 'rules' | 'lessons'>): Rule[] =>
  units(c).flatMap((u) => u.rules.map((r) => c.rules[r]!));

/**
 * The rules to show, by index: the one in hand, by its id, then those taught, or all. Where two
 * meet on a letter, the first has it.
 */
export function rulesShown(
  c: Pick<Catalogue, 'rules' | 'lessons'>,
  focus: string,
  taught: ReadonlySet<string> | 'all',
): number[] {
  const first = c.rules.filter((r) => r.id === focus);
  const more = rulesInOrder(c).filter(
    (r) => r.id !== focus && (taught === 'all' || taught.has(r.id)),
  );
  return [...first, ...more].map((r) => c.rules.indexOf(r));
}
