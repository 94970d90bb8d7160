// One line of a sheet: its words, the ring at a verse's end, and in the margin the numbers of the verses that end on it.
// An answer sheet has the counts above the letters and the rules' short names below.
import { h } from '../../dom.ts';
import type { Cell } from '../../print/marks.ts';
import type { Slot } from '../../marking/pieces.ts';
import { stands } from '../../text/letters.ts';
import { lined } from '../../text/lined.ts';
import type { Catalogue, Verse } from '../../types.ts';
import type { Ink } from './ink.ts';
import { type Measured, wordEl } from './measure.ts';

const digits = new Intl.NumberFormat('ar-u-nu-arab', { useGrouping: false });

/** A word of the passage: its verse and place, from 0. */
export interface At { v: number; w: number }

/** What is needed to draw answers; without it a line is one to practise on. */
export interface Answers { cells: Cell[][][]; measured: Measured; keys: Map<number, string>; ink: Ink }

const em = (x: number) => `${Math.round(x * 1000) / 1000}`;

function note(cls: string, s: Slot, text: string) {
  return h('span', { class: cls, style: `--at:${em(s.at + s.wide / 2)}` }, text);
}

function word(c: Catalogue, verses: Verse[], { v, w }: At, a: Answers): HTMLElement {
  const cells = a.cells[v]![w]!, family = (x: Cell) => c.rules[x.rules[0]!]!.family;
  const { el, base } = a.ink.word(verses[v]!.words[w]!, cells.map((x) => ({ l: x.l, family: family(x) })), a.measured, v, w);
  let before: { l: number; counts: string[]; keys: string[] } | undefined;
  const notes = cells.map((x) => {
    const counts = x.counts.filter(Boolean).slice(0, 1).map(String), keys = x.rules.map((r) => a.keys.get(r) ?? '').filter(Boolean);
    // A small letter and the one it stands over have one place on the line, and so one note.
    if (before?.l === x.l - 1 && stands(verses[v]!.words[w]!, x.l)) {
      before.counts.push(...counts);
      before.keys.push(...keys);
      return undefined;
    }
    return before = { l: x.l, counts, keys };
  });
  for (const x of notes) {
    if (!x) continue;
    const at = a.measured.slot(v, w, x.l);
    if (x.counts.length) base.append(note('held', at, x.counts.join(' ')));
    if (x.keys.length) base.append(note('key', at, x.keys.join(' ')));
  }
  if (base.firstChild) el.prepend(base);
  return el;
}

export function line(c: Catalogue, verses: Verse[], at: At[], answers?: Answers): HTMLElement {
  const p = h('p', { class: 'line', lang: 'ar', dir: 'rtl' }), ends: number[] = [];
  const words = at.map((x) => verses[x.v]!.words[x.w]!);
  for (const [i, x] of at.entries()) {
    const el = answers ? word(c, verses, x, answers) : wordEl(words[i]!);
    el.className += lined(words, i);
    p.append(el);
    if (x.w !== verses[x.v]!.words.length - 1 || verses[x.v]!.open) continue;
    p.append(h('span', { class: answers ? 'ring full' : 'ring' }));
    ends.push(verses[x.v]!.a);
  }
  return h('div', { class: 'row-line' }, p, h('span', { class: 'numbers', lang: 'ar' }, ends.map((a) => h('span', {}, digits.format(a)))));
}

/** The name of a surah before its first verse, with the basmala where the text has it before a surah and not as a verse. */
export function heading(c: Catalogue, s: number, basmala: string): HTMLElement {
  const name = c.surahs[s - 1]!;
  return h('div', { class: 'row-line head', lang: 'ar', dir: 'rtl' }, h('span', { class: 'surah-name' }, name.ar),
    basmala && s !== 1 && s !== 9 && h('span', { class: 'basmala' }, basmala));
}
