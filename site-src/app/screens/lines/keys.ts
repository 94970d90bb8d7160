// The keyboard on the lines. Left is on, right is back; with Ctrl or Alt by words; up and down by
// lines.
import { t } from '../../i18n.ts';
import { colours } from './colours.ts';
import { letterLabel } from './labels.ts';
import { byLetter, byLine, byWord } from './move.ts';
import type { Sheet } from '../../painting/sheet.ts';
import { pressed } from '../../pressed.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import type { Place } from '../../types.ts';
import { typed } from './counts.ts';
import { moveStop, say } from './say.ts';
import { advance } from './step.ts';

const START: Place = { v: 0, w: 0, l: 0 };

/** Listens on the lines; redraw paints them again, as when the keyboard leaves. */
export function keys(el: HTMLElement, sheet: Sheet, redraw: () => void) {
  // A finger goes where it presses: the lines must not move under it.
  el.addEventListener('focus', (e) => {
    if (!pressed(e)) go(el, sheet, practice.get()?.caret ?? START);
  });
  el.addEventListener('focusout', (e) => {
    if (el.contains(e.relatedTarget as Node | null)) return;
    el.tabIndex = 0;
    redraw();
  });
  el.addEventListener('keydown', (e) => {
    const p = practice.get();
    if (!p || (e.target as Element).closest('button')) return;
    const at = p.caret ?? START;
    const far = e.ctrlKey || e.altKey || e.metaKey;
    const to = target(p, sheet, at, e.key, far);
    if (to) go(el, sheet, to);
    else if (far || !press(p, at, e.key, e.repeat)) return; // the screen's own keys, as for undo
    e.preventDefault();
  });
}

/** Puts the keyboard on a letter. */
function go(el: HTMLElement, sheet: Sheet, at: Place) {
  const word = sheet.word(at.v, at.w);
  for (const x of sheet.shown) x.el.tabIndex = -1;
  word?.el.focus({ preventScroll: true });
  word?.el.scrollIntoView({ block: 'nearest' });
  if (word) word.el.tabIndex = 0;
  el.tabIndex = -1;
  practice.set({ caret: at });
  speak();
}

/** Where a key leads to, if it moves. */
function target(p: Practice, sheet: Sheet, at: Place, key: string, far: boolean) {
  const { verses } = p;
  const last = far ? verses.length - 1 : at.v;
  switch (key) {
    case 'ArrowLeft':
      return far ? byWord(verses, at, 1) : byLetter(verses, at, 1);
    case 'ArrowRight':
      return far ? byWord(verses, at, -1) : byLetter(verses, at, -1);
    case 'ArrowDown':
      return byLine(sheet, at, 1);
    case 'ArrowUp':
      return byLine(sheet, at, -1);
    case 'Home':
      return far ? START : { v: at.v, w: 0, l: 0 };
    case 'End':
      return { v: last, w: verses[last]!.words.length - 1, l: 0 };
    default:
      return undefined;
  }
}

/** Does what a key does at a letter; false if it does nothing. One held down chooses once. */
function press(p: Practice, at: Place, key: string, held: boolean): boolean {
  const finding = p.draft.phase === 'find' && practice.marksLetters(p);
  if (key === ' ' || key === 'Enter') {
    if (held) return true;
    practice.choose(at);
    speak();
  } else if (key === 'n') advance();
  else if (/^[1-9]$/.test(key) && finding) {
    if (!p.caret) practice.set({ caret: at });
    if (typed(practice.get() ?? p, Number(key))) speak();
  } else if (key === 'e') practice.set({ explained: at });
  else if (key === 'o') practice.set({ open: { v: at.v, w: at.w } });
  else if (key === 's') moveStop(at.v, at.w);
  else return false;
  return true;
}

/** Has a screen reader say the letter that the keyboard stands on. */
function speak() {
  const p = practice.get();
  if (p?.caret) say(letterOf(p, p.caret));
}

function letterOf(p: Practice, at: Place): string {
  const word = p.verses[at.v]!.words[at.w]!;
  const letter = letterLabel(p, colours(p), word, at);
  const words = t('say.letter', { letter, i: at.l + 1, n: word.letters.length });
  const m = practice.marked(p, at);
  const n = m && (m.count || p.draft.lengths?.[p.hand]);
  return n ? `${words} ${t('say.count', { n })}` : words;
}
