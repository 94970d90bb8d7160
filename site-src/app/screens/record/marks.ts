// The lines of a session as they were marked: the text with its colours and shapes, and the same in
// words.
import { html, nothing } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';
import { look } from '../../colour/ink.ts';
import { groupBy } from '../../group.ts';
import { join, t } from '../../i18n.ts';
import { pencilOf, pencils } from '../../marking/pencils.ts';
import type { Span } from '../../marking/spans.ts';
import { paint, unpaint } from '../../painting/paint.ts';
import { Sheet } from '../../painting/sheet.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { arabicDigits } from '../../text/digits.ts';
import { letterName } from '../../text/names.ts';
import type { Mark, Session, Verse } from '../../types.ts';
import { arabic } from '../parts/words.ts';
import { swatch } from '../parts/pencil.ts';

/** The text, to be painted over. */
export const keptLines = (verses: Verse[]) =>
  keyed(
    verses,
    html`<div class="sheet" data-t="kept-lines">
      <div class="text" lang="ar" dir="rtl">${verses.map(verse)}</div>
    </div>`,
  );

const verse = (x: Verse, v: number) =>
  html`<span class="verse"
      >${x.words.map((word, w) => [
        w ? ' ' : nothing,
        html`<span class="w" data-v=${v} data-w=${w} .textContent=${word.text}></span>`,
      ])}</span
    >
    ${x.open ? nothing : html`<span class="verse-end">${arabicDigits(x.a)}</span> `}`;

/** Marks whose letter there is. */
const shown = (s: Session, verses: Verse[]) =>
  s.marks.filter((m) => verses[m.v]?.words[m.w]?.letters[m.l]);

/** The pencil of a mark; undefined for one that is not known any more. */
const pencilFor = (s: Session, m: Mark) =>
  pencils(state.get().catalogue, [pencilOf(m, s)], 'all')[0];

function spans(s: Session, verses: Verse[]): Span[] {
  return shown(s, verses).flatMap((m) => {
    const pencil = pencilFor(s, m);
    return pencil ? [{ v: m.v, w: m.w, l: m.l, ...look(pencil.family) }] : [];
  });
}

let laid: { el: HTMLElement; verses: Verse[]; sheet: Sheet } | undefined;

/** Paints the marks, once they and the text have been read. */
export function paintMarks({ opened }: State) {
  const el = document.querySelector<HTMLElement>('[data-t=kept-lines]');
  if (!el || !opened?.session || opened.verses === 'failed') return;
  const { verses, session } = opened;
  if (laid?.el !== el || laid.verses !== verses) {
    const sheet = Sheet.of(el, verses);
    laid = { el, verses, sheet };
    sheet.whenFont(el.textContent, () => paintMarks(state.get()));
  }
  paint(laid.sheet, el, spans(session, verses), 'session');
}

export function leaveMarks() {
  laid = undefined;
  unpaint('session');
}

/** What was marked, in words: by verse and word, the letters with their pencil and count. */
export function markList(s: Session, verses: Verse[]) {
  const marks = shown(s, verses);
  const title = t('session.marked', { n: marks.length });
  if (!marks.length) return html`<p class="quiet" data-t="marked">${title}</p>`;
  const several = new Set(marks.map((m) => pencilOf(m, s))).size > 1;
  const inOrder = [...marks].sort((a, b) => a.v - b.v || a.w - b.w || a.l - b.l);
  const byWord = [...groupBy(inOrder, (m) => `${m.v} ${m.w}`).values()];
  return html`<details class="opens marked" data-t="marked">
    <summary>${title}</summary>
    <ul>
      ${byWord.map((list) => {
        const { v, w } = list[0]!;
        const { a, words } = verses[v]!;
        return html`<li>
          ${`${t('session.verse', { a })}: `}${arabic(words[w]!.text)}${' '}${letters(s, list, verses, several)}
        </li>`;
      })}
    </ul>
  </details>`;
}

/** The marked letters of a word, each with its pencil where there are several, and its count. */
const letters = (s: Session, list: Mark[], verses: Verse[], several: boolean) =>
  list.map((m, i) => {
    const pencil = pencilFor(s, m);
    const name = letterName(verses[m.v]!.words[m.w]!.letters[m.l]!);
    const more = [
      several ? (pencil?.name ?? m.pencil ?? '') : '',
      m.count ? t('session.count', { n: m.count }) : '',
    ].filter(Boolean);
    return html`${i ? ' · ' : nothing}${pencil ? swatch(pencil.family) : nothing}${
      more.length ? `${name} (${join(more)})` : name
    }`;
  });
