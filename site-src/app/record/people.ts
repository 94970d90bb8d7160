// Learners as lists show them: their order, their colour and their letter. Pure.
import type { Entry, Learner } from '../types.ts';

/** Colours that tell learners apart (generator/internal/colour/learners.go). */
export const COLOURS = 8;

/** The one who read last first, or as they were made. */
export type Order = 'read' | 'made';
export const ORDERS: readonly Order[] = ['read', 'made'];

type Coloured = Pick<Learner, 'id' | 'made' | 'colour'>;

const byMade = (a: Pick<Learner, 'id' | 'made'>, b: Pick<Learner, 'id' | 'made'>) =>
  a.made === b.made ? (a.id < b.id ? -1 : 1) : a.made < b.made ? -1 : 1;

/**
 * Learners in an order. sessions are newest first, as the store gives them; who has read nothing
 * yet comes last, in the order made.
 */
export function inOrder<L extends Pick<Learner, 'id' | 'made'>>(
  learners: readonly L[],
  sessions: readonly Pick<Entry, 'learner' | 'at'>[],
  by: Order,
): L[] {
  const made = [...learners].sort(byMade);
  if (by === 'made') return made;
  const last = new Map<string, string>();
  for (const { learner, at } of sessions) if (!last.has(learner)) last.set(learner, at);
  const at = (l: L) => last.get(l.id) ?? '';
  return made.sort((a, b) => (at(a) === at(b) ? 0 : at(a) < at(b) ? 1 : -1));
}

/** The number of a learner's colour: the one chosen, or by the order in which all were made. */
export const colourOf = (l: Coloured, all: readonly Coloured[]): number =>
  l.colour ??
  Math.max(
    0,
    [...all].sort(byMade).findIndex((x) => x.id === l.id),
  ) % COLOURS;

/** The first colour that the fewest of some learners have. */
export function freeColour(all: readonly Coloured[]): number {
  const uses = Array.from({ length: COLOURS }, () => 0);
  for (const l of all) uses[colourOf(l, all)]!++;
  return uses.indexOf(Math.min(...uses));
}

const graphemes = 'Segmenter' in Intl ? new Intl.Segmenter() : undefined;

/** Signs that turn the direction of a text, and are no letters. */
const UNSEEN = /[\u200e\u200f\u061c\u202a-\u202e\u2066-\u2069\s]/g;

/** The first letter of a name as it is read, with its marks, in capitals where there are such. */
export function initial(name: string): string {
  const seen = name.replace(UNSEEN, '');
  const first = graphemes?.segment(seen)[Symbol.iterator]().next().value?.segment ?? [...seen][0];
  return (first ?? '').toLocaleUpperCase();
}
