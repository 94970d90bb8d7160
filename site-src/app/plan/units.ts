// What is taught at once, in the order that the build worked out
// (generator/internal/plan/units.go).
import type { Catalogue } from '../types.ts';

/** A lesson with its rules, and the lessons it needs, by number. */
export interface Unit {
  id: string;
  name: string;
  ar: string;
  family: string;
  rules: number[];
  needs: number[];
}

export function units(c: Pick<Catalogue, 'rules' | 'lessons'>): Unit[] {
  const at = new Map(c.rules.map((r, i) => [r.id, i]));
  const of = new Map(c.lessons.flatMap((l, i) => l.rules.map((r) => [r, i] as const)));
  return c.lessons.map(({ id, name, ar, rules }, i) => {
    const mine = rules.map((r) => at.get(r)!);
    const needs = mine.flatMap((r) => c.rules[r]!.needs.map((n) => of.get(n)!));
    return {
      id,
      name,
      ar,
      family: c.rules[mine[0]!]!.family,
      rules: mine,
      needs: [...new Set(needs)].filter((n) => n !== i).sort((a, b) => a - b),
    };
  });
}

export const unitPlaces = (us: Unit[], places: number[]) =>
  us.map((u) => u.rules.reduce((n, r) => n + places[r]!, 0));

export const missing = (us: Unit[], taught: boolean[], i: number) =>
  us[i]!.needs.filter((n) => !taught[n]);
