// Names letters, marks, verses, rules and learners in words, for explanations and for screen readers.
import type { Learner, Letter, Place, Ref, Rule, Verse } from '../types.ts';
import { has, join, type Key, t } from '../i18n.ts';

const code = (c: number) => c.toString(16).padStart(4, '0');

// Written with a hamza as a sign of its own: over the line, or beneath a seat of ya. The letter's
// name tells it.
const ABOVE = 0x654;
const BELOW = 0x655;
const STRETCH = 0x640;
const SEAT = 0x649;
const beneath = (l: Letter) => l.rune === SEAT && l.marks.includes(BELOW);

/** The letter's name; a carrier with a hamza is named for the hamza too. */
export const letterName = (l: Letter) =>
  t(`letter.${code(l.rune)}${beneath(l) ? `-${code(BELOW)}` : ''}` as Key);

/** What stands on the letter, in words; empty for a bare letter. */
export function markNames(l: Letter): string {
  const set = new Set(l.marks);
  const out: string[] = [];
  // A vowel with a small meem is a tanween turned to meem; named as one sign.
  const meem = set.has(0x6e2) ? 0x6e2 : set.has(0x6ed) ? 0x6ed : 0;
  const told = beneath(l) ? BELOW : l.rune === STRETCH ? ABOVE : 0;
  for (const m of l.marks) {
    const key = `mark.${code(m)}`;
    if (m !== meem && m !== told && has(key)) out.push(t(key));
  }
  if (meem) out.push(t('mark.meem'));
  return join(out);
}

/** For a screen reader: the letter with its marks, as in "noon, sukun". */
export const spoken = (l: Letter) => [letterName(l), markNames(l)].filter(Boolean).join(', ');

export const letterAt = (vs: Verse[], p: Place) => vs[p.v]!.words[p.w]!.letters[p.l]!;

/**
 * As "An-Naba 1–5", with both surahs' names where the lines cross into the next, and with the words
 * that begin or end them.
 */
export function linesName(surahs: { la: string }[], from: Ref, to: Ref): string {
  const name = versesName(surahs, from, to);
  const key = from.w === undefined ? 'to' : to.w === undefined ? 'from' : 'both';
  return from.w === undefined && to.w === undefined
    ? name
    : t(`ref.words-${key}`, { name, from: (from.w ?? 0) + 1, to: (to.w ?? 0) + 1 });
}

function versesName(surahs: { la: string }[], from: Ref, to: Ref): string {
  const a = surahs[from.s - 1]!.la;
  if (from.s !== to.s)
    return t('ref.across', { from: a, a: from.a, to: surahs[to.s - 1]!.la, b: to.a });
  return from.a === to.a
    ? t('ref.one', { surah: a, a: from.a })
    : t('ref.many', { surah: a, a: from.a, b: to.a });
}

/** The name of a rule; of one that is not known any more, its id. */
export const nameOfRule = (rules: Rule[], id: string) => rules.find((r) => r.id === id)?.name ?? id;

/** What a learner is called. */
export const called = (l: Pick<Learner, 'name'> | undefined) => l?.name || t('child');
