// One line of a sheet: its words, the ring at a verse's end, and in the margin the numbers of the
// verses that end on it. An answer sheet has the counts above the letters and the rules' short
// names below.
import { h } from '../../dom.ts';
import { look } from '../../colour/ink.ts';
import type { Slot } from '../../marking/pieces.ts';
import { spanOf } from '../../marking/spans.ts';
import { type Marks, notes } from '../../print/marks.ts';
import { lined } from '../../text/lined.ts';
import type { Catalogue, Event, Verse } from '../../types.ts';
import type { Ink } from './ink.ts';
import { type Measured, wordEl } from './measure.ts';

const digits = new Intl.NumberFormat('ar-u-nu-arab', { useGrouping: false });

/** A word of the passage: its verse and place, from 0. */
export interface At {
  v: number;
  w: number;
}

/** What is needed to draw answers; without it a line is one to practise on. */
export interface Answers {
  hits: Marks['hits'];
  count: (e: Event) => number;
  measured: Measured;
  keys: Map<number, string>;
  ink: Ink;
}

const em = (x: number) => `${Math.round(x * 1000) / 1000}`;

function note(cls: string, s: Slot, text: string) {
  return h('span', { class: cls, style: `--at:${em(s.at + s.wide / 2)}` }, text);
}

function word(c: Catalogue, verses: Verse[], { v, w }: At, a: Answers): HTMLElement {
  const word = verses[v]!.words[w]!,
    hits = a.hits[v]![w]!;
  const { el, base } = a.ink.word(
    word,
    hits.map((h) => spanOf(h, look(c.rules[h.e.rule]!.family))),
    a.measured,
    v,
    w,
  );
  for (const x of notes(word, hits, a.count, a.keys)) {
    const at = a.measured.slot(v, w, x.l);
    if (x.counts.length) base.append(note('held', at, x.counts.join(' ')));
    if (x.keys.length) base.append(note('key', at, x.keys.join(' ')));
  }
  if (base.firstChild) el.prepend(base);
  return el;
}

export function line(c: Catalogue, verses: Verse[], at: At[], answers?: Answers): HTMLElement {
  const p = h('p', { class: 'line', lang: 'ar', dir: 'rtl' }),
    ends: number[] = [];
  const words = at.map((x) => verses[x.v]!.words[x.w]!);
  for (const [i, x] of at.entries()) {
    const el = answers ? word(c, verses, x, answers) : wordEl(words[i]!);
    el.className += lined(words, i);
    p.append(el);
    if (x.w !== verses[x.v]!.words.length - 1 || verses[x.v]!.open) continue;
    p.append(h('span', { class: answers ? 'ring full' : 'ring' }));
    ends.push(verses[x.v]!.a);
  }
  return h(
    'div',
    { class: 'row-line' },
    p,
    h(
      'span',
      { class: 'numbers', lang: 'ar' },
      ends.map((a) => h('span', {}, digits.format(a))),
    ),
  );
}

/**
 * The name of a surah before its first verse, with the basmala where the text has it before a surah
 * and not as a verse.
 */
export function heading(c: Catalogue, s: number, basmala: string): HTMLElement {
  const name = c.surahs[s - 1]!;
  return h(
    'div',
    { class: 'row-line head', lang: 'ar', dir: 'rtl' },
    h('span', { class: 'surah-name' }, name.ar),
    basmala && s !== 1 && s !== 9 && h('span', { class: 'basmala' }, basmala),
  );
}
