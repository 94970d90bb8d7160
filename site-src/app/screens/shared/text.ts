// The verses on the shared screen: the same words as on the lines, with nothing to press but
// letters.
import { html, nothing } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';
import { t } from '../../i18n.ts';
import type { Verse } from '../../types.ts';
import { number, sheet, versesOf, wordOf } from '../lines/text.ts';
import type { Board } from './board.ts';

/** The sheet with what is drawn over it; screens/shared/sheet.ts fills the drawing and the layer. */
export const sheetOf = (b: Board) =>
  sheet(
    b.lines,
    b.pencils,
    html`${guard([b.verses], () => versesOf(b, (verse, v, w) => place(b, verse, v, w)))}`,
    html`<svg class="drawing" aria-hidden="true" data-t="drawing">
        <g></g>
        <path class="live"></path>
        <circle class="pointer" r="14"></circle>
      </svg>
      <div class="layer"></div>`,
  );

/** A word with the end of its verse, or with the ring where one stops after it. */
function place(b: Board, verse: Verse, v: number, w: number) {
  const word = wordOf(verse.words, v, w);
  const last = w === verse.words.length - 1;
  const stops = b.stops.after(v, w);
  if (!last && !stops) return word;
  const what = t(stops ? 'stop.stops' : 'stop.reads-on');
  const end = last && !verse.open;
  return html`<span class="with-stop"
    >${word}<span
      class=${end ? 'ends' : 'stops'}
      ?data-on=${!stops}
      role="img"
      aria-label=${t(end ? 'stop.end' : 'stop.sign', { a: verse.a, what })}
      >${end ? number(verse.a) : nothing}</span
    ></span
  >`;
}
