// The lines themselves: every verse, its words, and the places where one may stop.
import { html, nothing, type TemplateResult } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';
import { t } from '../../i18n.ts';
import type { Pencil } from '../../marking/pencils.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import * as state from '../../state.ts';
import { arabicDigits } from '../../text/digits.ts';
import { opens } from '../../text/data.ts';
import { lined } from '../../text/lined.ts';
import { linesName } from '../../text/names.ts';
import type { Stops } from '../../text/stops.ts';
import type { Lines, Verse, Word } from '../../types.ts';
import { moveStop } from './say.ts';

/** The sheet of the lines, with the layer for what lies over them. */
export const sheetOf = (p: Practice) =>
  sheet(
    p.draft.lines,
    p.pencils,
    html`${guard([p.verses, p.draft.stops, practice.stopsMove(p)], () => verses(p))}`,
    html`<div class="layer" aria-hidden="true"></div>`,
  );

/** Lines to be painted, in the colours of some pencils; over is what lies over them. */
export const sheet = (
  { from, to }: Lines,
  pencils: Pencil[],
  text: TemplateResult,
  over: TemplateResult,
) =>
  html`<div
    class="sheet"
    data-ink=${[...new Set(pencils.map((x) => `f-${x.family}`))].join(' ') || nothing}
    role="application"
    tabindex="0"
    data-t="passage"
    aria-describedby="keys-help"
    aria-label=${linesName(state.get().catalogue.surahs, from, to)}
  >
    <div class="text" lang="ar" dir="rtl">${text}</div>
    <div class="glass" aria-hidden="true"></div>
    ${over}
  </div>`;

function verses(p: Practice) {
  const now = practice.stops(p);
  const { verses, basmala, draft } = p;
  return versesOf({ verses, basmala, lines: draft.lines }, (verse, v, w) =>
    place(p, verse, v, w, now),
  );
}

/** Draws word w of verse v, with what stands after it. */
type Draw = (verse: Verse, v: number, w: number) => TemplateResult;

/** Some lines, and what is read before a surah's first verse. */
interface Text {
  verses: Verse[];
  basmala: string;
  lines: Lines;
}

/** Every verse, its words drawn by draw. */
export const versesOf = (x: Text, draw: Draw) =>
  x.verses.map(
    (verse, v) =>
      html`${heading(x, verse, v)}<span
          class="verse"
          data-t="verse-${verse.s}-${verse.a}"
          data-ref="${verse.s}:${verse.a}"
          >${runs(verse).map((run, i) => [i ? ' ' : nothing, runOf(run, verse, v, draw)])}</span
        > `,
  );

/** A surah's name where the lines cross into another, and what is read before its first verse. */
function heading({ lines: { from, to }, basmala }: Text, verse: Verse, v: number) {
  const named = from.s !== to.s && (verse.a === 1 || v === 0);
  const before = basmala && verse.a === 1 && opens(verse.s);
  const surah = state.get().catalogue.surahs[verse.s - 1]!.ar;
  return [
    named ? html`<span class="surah">${surah}</span>` : nothing,
    before ? html`<span class="basmala" data-t="basmala">${basmala}</span>` : nothing,
  ];
}

/** Words that stand together: those under one line of a prostration, else each alone. */
interface Run {
  lined: boolean;
  words: number[];
}

function runs(verse: Verse): Run[] {
  const out: Run[] = [];
  verse.words.forEach((word, w) => {
    const last = out.at(-1);
    if (word.lined && last?.lined) last.words.push(w);
    else out.push({ lined: !!word.lined, words: [w] });
  });
  return out;
}

function runOf(run: Run, verse: Verse, v: number, draw: Draw) {
  const words = run.words.map((w, i) => [i ? ' ' : nothing, draw(verse, v, w)]);
  return run.lined
    ? html`<span role="group" aria-label=${t('lines.lined')}>${words}</span>`
    : words;
}

/** A word with the place to stop after it, if there is one: a line must not begin with its sign. */
function place(p: Practice, verse: Verse, v: number, w: number, now: Stops): TemplateResult {
  const last = w === verse.words.length - 1;
  const word = wordOf(verse.words, v, w);
  if (!last && !now.movable(v, w)) return word;
  return html`<span class="with-stop">${word}${stop(p, verse, v, w, now)}</span>`;
}

/** The word is one text node, as the source has it: ranges of letters are laid over it. */
export const wordOf = (words: Word[], v: number, w: number) =>
  html`<span
    class="w${lined(words, w)}"
    role="button"
    tabindex="-1"
    data-v=${v}
    data-w=${w}
    .textContent=${words[w]!.text}
  ></span>`;

/** A verse's number as the print has it, and as it stands in the words around the lines. */
export const number = (a: number) =>
  html`${arabicDigits(a)}<span class="latin" lang="en">${a}</span>`;

function stop(p: Practice, verse: Verse, v: number, w: number, now: Stops) {
  const end = w === verse.words.length - 1 && !verse.open;
  const what = t(now.after(v, w) ? 'stop.stops' : 'stop.reads-on');
  return html`<button
    class=${end ? 'stop end' : 'stop'}
    ?disabled=${!now.movable(v, w)}
    data-t="stop-${verse.s}-${verse.a}-${w}"
    aria-pressed=${now.after(v, w)}
    aria-disabled=${practice.stopsMove(p) ? nothing : 'true'}
    aria-label=${t(end ? 'stop.end' : 'stop.sign', { a: verse.a, what })}
    title=${what}
    @click=${() => moveStop(v, w)}
  >
    ${end ? number(verse.a) : nothing}
  </button>`;
}
