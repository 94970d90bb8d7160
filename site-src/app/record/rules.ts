// The rules of a session that is corrected or added.
import type { Mark, Session, Tally } from '../types.ts';
import { tallies } from './totals.ts';

type Was = Pick<Session, 'rule' | 'also' | 'pencils' | 'found' | 'missed'> | undefined;

const before = (was: Was) => (was ? tallies(was as Session).map((x) => x.rule) : []);

/**
 * The rule of the lines: as it was while it is still marked; none where other pencils alone marked;
 * else the first.
 */
export function ruleOf(was: Was, list: Tally[]): string {
  if (was && list.some((x) => x.rule === was.rule)) return was.rule;
  if (was && !was.rule && was.also?.length) return '';
  return list[0]?.rule ?? '';
}

/** The pencils beside that of the rule: those there were and still are, then those of new rules. */
export function pencilsWith(was: Was, rule: string, list: Tally[]): string[] | undefined {
  const ids = list.map((x) => x.rule);
  const had = before(was);
  const kept = (was?.pencils ?? []).filter((x) => ids.includes(x) || !had.includes(x));
  const added = ids.filter((x) => !had.includes(x));
  const all = [...new Set([...kept, ...added])].filter((x) => x !== rule);
  return all.length ? all : undefined;
}

/** Marks, each of the pencil it was made with, when the rule of their lines is another one. */
export const marksOf = (marks: Mark[], was: string, now: string): Mark[] =>
  was === now || !was
    ? marks
    : marks.map(({ pencil = was, ...m }) => (pencil === now ? m : { ...m, pencil }));
