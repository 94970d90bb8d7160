// The keyboard on the shared screen. Left and right go by letter, with Ctrl by word, up and down by
// line; where no letter is chosen, they and the page keys turn the page.
import { clear, number, ring, ringAt, under, undo } from '../../marking/drawing.ts';
import { t } from '../../i18n.ts';
import type { Sheet } from '../../painting/sheet.ts';
import { pressed } from '../../pressed.ts';
import { letterAt, spoken } from '../../text/names.ts';
import type { Place } from '../../types.ts';
import { byLetter, byLine, byWord } from '../lines/move.ts';
import { type Board, draw, get, say, set } from './board.ts';
import { PAD, rowsOf, turned } from './page.ts';
import { larger } from './size.ts';

const START: Place = { v: 0, w: 0, l: 0 };

let sheet: Sheet | undefined;

/** Listens on a sheet: the keyboard that comes to it begins at a letter. */
export function followKeys(el: HTMLElement, now: Sheet) {
  sheet = now;
  el.addEventListener('focus', (e) => {
    if (!pressed(e)) go(get()?.caret ?? START);
  });
}

/** Puts the keyboard on a letter, and has a screen reader say it. */
function go(at: Place) {
  const b = get();
  const word = sheet?.word(at.v, at.w);
  if (!b || !word) return;
  word.el.focus({ preventScroll: true });
  word.el.scrollIntoView({ block: 'nearest' });
  set({ caret: at, numbers: undefined });
  const n = b.verses[at.v]!.words[at.w]!.letters.length;
  say(t('say.letter', { letter: spoken(letterAt(b.verses, at)), i: at.l + 1, n }));
}

/** Where a key leads to from a letter, if it moves. */
function target({ verses, caret }: Board, key: string, far: boolean): Place | undefined {
  const on = key === 'ArrowLeft' ? 1 : key === 'ArrowRight' ? -1 : 0;
  if (on) return !caret ? START : far ? byWord(verses, caret, on) : byLetter(verses, caret, on);
  const down = key === 'ArrowDown' ? 1 : key === 'ArrowUp' ? -1 : 0;
  return caret && sheet && down ? byLine(sheet, caret, down) : undefined;
}

/** Does what a key does at a letter; false if it does nothing. */
function mark(at: Place, key: string): boolean {
  if (key === ' ' || key === 'Enter') draw((d) => ring(d, at));
  else if (key === 'u') draw((d) => under(d, [{ v: at.v, w: at.w }]));
  else return false;
  return true;
}

/** Does what a key does wherever the keyboard is; false if it does nothing. */
function anywhere(b: Board, key: string): boolean {
  if (/^[2-6]$/.test(key)) {
    const own = b.caret && ringAt(b.drawing, b.caret) ? b.caret : undefined;
    draw((d) => number(d, Number(key), own));
  } else if (key === '+' || key === '=') larger(1);
  else if (key === '-') larger(-1);
  else return turnPage(key);
  return true;
}

function turnPage(key: string): boolean {
  const foot = document.querySelector('.board-foot')!.getBoundingClientRect();
  const boxes = sheet?.shown.map((s) => s.el.getBoundingClientRect()) ?? [];
  const rows = rowsOf(boxes).map((r) => ({ top: r.top + scrollY, bottom: r.bottom + scrollY }));
  const to = turned(rows, scrollY, foot.top, key);
  if (to !== undefined) scrollTo({ top: to - PAD, behavior: 'instant' });
  return to !== undefined;
}

/** Escape closes the numbers, then clears what is drawn, then leaves. */
function escape(b: Board, leave: () => void) {
  if (b.numbers) set({ numbers: undefined });
  else if (b.drawing.drawn.length) draw(clear);
  else leave();
}

/** leave leads back to the lines. */
export const keysOf = (leave: () => void) => (e: KeyboardEvent) => {
  const b = get();
  const far = e.ctrlKey || e.altKey || e.metaKey;
  if (!b || e.defaultPrevented) return;
  const to = e.shiftKey ? undefined : target(b, e.key, far);
  const button = e.target instanceof Element && e.target.closest('button');
  if (e.key === 'Escape') escape(b, leave);
  else if ((e.ctrlKey || e.metaKey) && !e.shiftKey && e.key.toLowerCase() === 'z') draw(undo);
  else if (to) go(to);
  else if (far || !(act(b, e.key, !!button) || anywhere(b, e.key))) return;
  e.preventDefault();
};

const act = ({ caret }: Board, key: string, button: boolean) =>
  !button && !!caret && mark(caret, key);
