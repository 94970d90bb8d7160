// What the colours and shapes on the lines say, in words, for a reader who cannot see them. All of
// it comes from the spans that are painted.
import { groupBy } from '../../group.ts';
import { join, t } from '../../i18n.ts';
import type { Look, Span } from '../../marking/spans.ts';
import type { Sheet } from '../../painting/sheet.ts';
import type { Practice } from '../../practice/practice.ts';
import * as state from '../../state.ts';
import { sorted } from '../../text/counts.ts';
import { letterName, spoken } from '../../text/names.ts';
import { type Place, samePlace, type Word } from '../../types.ts';
import { familyName } from '../parts/family.ts';

const CHECKED = ['found', 'missed', 'extra'] as const;

const checked = (name: string) => CHECKED.find((x) => x === name);

/** The family that a span is painted for. */
const family = (name: string) =>
  familyName(state.get().catalogue.families.find((f) => `f-${f.id}` === name)?.id ?? '');

/** How a span of this name is marked: by the check, by the child with a pencil, or as a place. */
function how(p: Practice, spans: Span[], { name, key }: Look): string {
  const told = checked(name);
  if (told) return t(`said.${told}`);
  const own = key && p.pencils.find((x) => x.key === key)?.name;
  if (p.draft.phase !== 'find' || p.answer) return own || family(name);
  const several = own || spans.some((s) => s.name !== name && !checked(s.name));
  return several ? t('said.marked-as', { family: own || family(name) }) : t('said.marked');
}

/** A letter with its signs, and how it is marked: "noon, sukun, missed". */
export function letterLabel(p: Practice, spans: Span[], word: Word, at: Place): string {
  const here = spans.filter((s) => samePlace(s, at));
  const told = new Set(here.map((s) => how(p, spans, s)));
  return [spoken(word.letters[at.l]!), ...told].join(', ');
}

/** A letter of a word; one of two that are called the same is told by its place. */
function nameIn(word: Word, l: number): string {
  const letter = letterName(word.letters[l]!);
  const twin = word.letters.some((x, i) => i !== l && letterName(x) === letter);
  return twin ? t('said.nth', { letter, i: l + 1 }) : letter;
}

/** A word and how letters of it are marked: "…: found noon, missed ra". */
function wordLabel(p: Practice, spans: Span[], word: Word, own: Span[]): string {
  const told = [...groupBy(own, (s) => `${s.name} ${s.key}`).values()].map((letters) => {
    const [one] = letters;
    const { name } = one!;
    const places = sorted(letters.map((s) => s.l)).map((l) => nameIn(word, l));
    const plain = name === 'found' || name === 'missed' || how(p, spans, one!) === t('said.marked');
    return t(plain ? 'said.letters' : 'said.on', {
      how: how(p, spans, one!),
      letters: join(places),
    });
  });
  return t('said.word', { word: word.text, told: told.join(', ') });
}

/**
 * Gives every word with marked letters a name that tells them. It is a label and no description:
 * those are left out by the settings of many screen readers, and come late in others. A word
 * without marks is called by its text alone.
 */
export function labelWords(p: Practice, sheet: Sheet, spans: Span[]) {
  const byWord = groupBy(spans, (s) => `${s.v}.${s.w}`);
  for (const { v, w, el, word } of sheet.shown) {
    const own = byWord.get(`${v}.${w}`);
    if (own) el.setAttribute('aria-label', wordLabel(p, spans, word, own));
    else el.removeAttribute('aria-label');
  }
}
