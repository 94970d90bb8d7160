// The order of the rules and how far a learner is. The order is the families' order, which is the teaching sequence,
// then the catalogue's, moved back where a rule needs another first.
import type { Catalogue, Rule, Session, Taught } from '../types.ts';

export type Step = 'not-yet' | 'learning' | 'known';

/** Different days on which lines must have been read alone before a rule counts as known. */
export const DAYS = 3;

/** The rules in an order that respects needs. A circle of needs cannot hide a rule: what is left is added as it stands. */
export function order(c: Catalogue): Rule[] {
  const family = new Map(c.families.map((f, i) => [f.id, i]));
  const left = c.rules.map((r, i) => ({ r, i })).sort((a, b) =>
    (family.get(a.r.family) ?? 99) - (family.get(b.r.family) ?? 99) || a.i - b.i).map((x) => x.r);
  const out: Rule[] = [], placed = new Set<string>(), ids = new Set(c.rules.map((r) => r.id));
  while (left.length) {
    const at = left.findIndex((r) => r.needs.every((n) => placed.has(n) || !ids.has(n)));
    const [r] = left.splice(Math.max(at, 0), 1);
    placed.add(r!.id);
    out.push(r!);
  }
  return out;
}

/** The days on which the rule's lines were read alone. */
export const days = (rule: string, sessions: Session[]) =>
  new Set(sessions.filter((s) => s.rule === rule && s.outcome === 'alone').map((s) => s.day)).size;

export function step(rule: string, taught: Taught[], sessions: Session[]): Step {
  const x = taught.find((y) => y.rule === rule);
  if (!x) return 'not-yet';
  return x.known || days(rule, sessions) >= DAYS ? 'known' : 'learning';
}

/** What a rule still needs taught before it. */
export const missing = (r: Rule, taught: Taught[]) => r.needs.filter((n) => !taught.some((x) => x.rule === n));
