// The pencils for some lines: a rule, several rules together, or the stops. Pure.
import { STOPS } from '../share/link.ts';
import { sorted } from '../text/counts.ts';
import {
  type Catalogue,
  type Lengths,
  type Lines,
  type Mark,
  type Phase,
  type Rule,
  samePlace,
} from '../types.ts';

/**
 * rules are those whose places it marks, by their numbers in the catalogue, and none for stops;
 * name is empty for stops. key stands beside its marks where another pencil has the same colour and
 * shape.
 */
export interface Pencil {
  id: string;
  name: string;
  family: string;
  rules: number[];
  key?: string;
}

type Book = Pick<Catalogue, 'rules' | 'groups'>;

export { STOPS };

/** The ids of the pencils of some lines, that of their rule first. */
export const pencilIds = ({ rule, also = [] }: Pick<Lines, 'rule' | 'also'>): string[] =>
  [rule, ...also].filter(Boolean);

/** The step that lines begin with. */
export const firstStep = (l: Pick<Lines, 'rule' | 'also'>): Phase =>
  pencilIds(l).length ? 'find' : 'read';

/** The family that changes words where the reader stops: the pencil of stops has its colour. */
export const stopFamily = (c: Book) => c.rules.find((r) => r.role === 'ending')?.family ?? '';

/**
 * The pencils of some lines. One that stands for several rules stands for those that were taught
 * and have no pencil of their own; for all of them where none was.
 */
export function pencils(c: Book, ids: string[], taught: ReadonlySet<string> | 'all'): Pencil[] {
  return keyed(chosen(c, ids, taught));
}

function chosen(c: Book, ids: string[], taught: ReadonlySet<string> | 'all'): Pencil[] {
  return ids.flatMap((id): Pencil[] => {
    if (id === STOPS) return [{ id, name: '', family: stopFamily(c), rules: [] }];
    const rule = c.rules.findIndex((r) => r.id === id);
    if (rule >= 0) return [{ id, name: c.rules[rule]!.name, ...one(c, rule) }];
    const group = c.groups.find((g) => g.id === id);
    if (!group) return [];
    const all = c.rules.filter((r) => group.families.includes(r.family) && !ids.includes(r.id));
    const learnt = all.filter((r) => taught === 'all' || taught.has(r.id));
    const rules = (learnt.length ? learnt : all).map((r) => c.rules.indexOf(r));
    return [{ id, name: group.name, family: group.families[0]!, rules }];
  });
}

/** No i, l or o: beside letters and on paper they are read as figures. */
export const KEYS = 'abcdefghjkmnpqrstuvwxyz';

/** Gives keys to those that mark letters with the same colour and shape. */
function keyed(all: Pencil[]): Pencil[] {
  const marking = all.filter((x) => x.id !== STOPS);
  const alike = marking.filter((x) => marking.some((y) => y !== x && y.family === x.family));
  return all.map((x) => (alike.includes(x) ? { ...x, key: KEYS[alike.indexOf(x)]! } : x));
}

const one = (c: Book, rule: number) => ({ family: c.rules[rule]!.family, rules: [rule] });

/** What a mark was made with. */
export const pencilOf = (m: Mark, l: Pick<Lines, 'rule'>) => m.pencil ?? l.rule;

/** Whether two marks are of the same pencil on the same letter. */
export const sameMark = (a: Mark, b: Mark) => samePlace(a, b) && a.pencil === b.pencil;

/** The lengths that the places of a pencil can have as the family holds them, in counts. */
export function lengthsOf(rules: Rule[], p: Pencil, s: Lengths): number[] {
  const all = p.rules.flatMap((r) => {
    const { setting, counts } = rules[r]!;
    return setting ? [s[setting]] : counts;
  });
  return sorted(all);
}
