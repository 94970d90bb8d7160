// Which rule next: what would become readable in the lines the child is about to read.
import { missing, type Unit } from './units.ts';

export interface Option {
  unit: number;
  places: number;
}

/** The units whose needs are met, those with the most places first. */
export function next(us: Unit[], places: number[], taught: boolean[]): Option[] {
  const out: Option[] = [];
  us.forEach((_, i) => {
    if (!taught[i] && !missing(us, taught, i).length) out.push({ unit: i, places: places[i]! });
  });
  return out.sort((a, b) => b.places - a.places);
}

/**
 * The order the adult chose, made whole: what it does not name comes after, and nothing moves
 * before what it needs.
 */
export function order(us: Unit[], chosen: string[]): number[] {
  const ids = new Map(us.map((u, i) => [u.id, i]));
  const left = [...new Set([...chosen.flatMap((id) => ids.get(id) ?? []), ...us.keys()])];
  const done = us.map(() => false);
  const out: number[] = [];
  while (left.length) {
    const k = Math.max(
      0,
      left.findIndex((u) => !missing(us, done, u).length),
    );
    const [u] = left.splice(k, 1);
    done[u!] = true;
    out.push(u!);
  }
  return out;
}

/**
 * Whether unit u may stand at place to of an order: nothing it needs comes after it, nothing that
 * needs it before.
 */
export function mayMove(us: Unit[], now: number[], u: number, to: number): boolean {
  const without = now.filter((x) => x !== u);
  return (
    !without.slice(to).some((x) => us[u]!.needs.includes(x)) &&
    !without.slice(0, to).some((x) => us[x]!.needs.includes(u))
  );
}
