// What is taught at once, and in which order: the same as generator/internal/plan/units.go.
import type { Catalogue } from '../types.ts';

/** The rules of one lesson, or one rule that no lesson teaches. Rules and needs are numbers. */
export interface Unit { id: string; name: string; ar: string; family: string; rules: number[]; needs: number[] }

export interface Step { unit: number; places: number; opens: number; lessons: number; together: number }

export function units(c: Pick<Catalogue, 'rules' | 'lessons'>): Unit[] {
  const out: Unit[] = [], of = new Map<string, number>(), at = new Map(c.rules.map((r, i) => [r.id, i]));
  const add = (id: string, name: string, ar: string, ids: string[]) => {
    const rules = ids.filter((r) => at.has(r) && !of.has(r));
    if (!rules.length) return;
    for (const r of rules) of.set(r, out.length);
    out.push({ id, name, ar, family: c.rules[at.get(rules[0]!)!]!.family, rules: rules.map((r) => at.get(r)!), needs: [] });
  };
  for (const l of c.lessons) add(l.id, l.name, l.ar, l.rules);
  for (const r of c.rules) add(r.id, r.name, r.ar, [r.id]);
  out.forEach((u, i) => {
    const needs = u.rules.flatMap((r) => c.rules[r]!.needs.map((n) => of.get(n)!)).filter((n) => n !== i);
    u.needs = [...new Set(needs)].sort((a, b) => a - b);
  });
  return out;
}

export const unitPlaces = (us: Unit[], places: number[]) => us.map((u) => u.rules.reduce((n, r) => n + places[r]!, 0));

export const missing = (us: Unit[], taught: boolean[], i: number) => us[i]!.needs.filter((n) => !taught[n]);

/** A unit with everything it still needs, in the order of the units. */
function closure(us: Unit[], done: boolean[], i: number): number[] {
  const seen = new Set<number>();
  const visit = (u: number) => {
    if (seen.has(u) || done[u]) return;
    seen.add(u);
    us[u]!.needs.forEach(visit);
  };
  visit(i);
  return [...seen].sort((a, b) => a - b);
}

/** The units not yet taught, so that the most places become readable early; why, says each step. See units.go. */
export function sequence(us: Unit[], places: number[], taught: boolean[]): Step[] {
  const done = [...taught], steps: Step[] = [];
  for (;;) {
    let best: Step | undefined;
    us.forEach((_, i) => {
      if (done[i]) return;
      const chain = closure(us, done, i), together = chain.reduce((n, u) => n + places[u]!, 0);
      let first = -1;
      for (const u of chain) if (!missing(us, done, u).length && (first < 0 || places[u]! > places[first]!)) first = u;
      if (first < 0) first = i;
      if (!best || together * best.lessons > best.together * chain.length) {
        best = { unit: first, places: places[first]!, opens: i, lessons: chain.length, together };
      }
    });
    if (!best) return steps;
    done[best.unit] = true;
    steps.push(best);
  }
}
