// The keyboard on the lines. Left is on, right is back; with Ctrl or Alt by words; up and down by
// lines.
import { byLetter, byLine, byWord } from '../../marking/move.ts';
import type { Sheet } from '../../marking/sheet.ts';
import type { Place } from '../../types.ts';
import * as live from './live.ts';
import { advance } from './bar.ts';
import { act, say } from './passage.ts';

/** Listens on the lines; redraw draws them alone again, as when the keyboard leaves. */
export function keys(el: HTMLElement, sheet: Sheet, redraw: () => void) {
  const go = (p: Place) => {
    const l = live.get();
    if (!l) return;
    const s = sheet.word(p.v, p.w);
    sheet.shown.forEach((x) => {
      x.el.tabIndex = -1;
    });
    s?.el.focus({ preventScroll: true });
    s?.el.scrollIntoView({ block: 'nearest' });
    if (s) s.el.tabIndex = 0;
    el.tabIndex = -1;
    live.set({ caret: p, say: say(l, p) });
  };
  const speak = () => {
    const l = live.get();
    if (l?.caret) live.set({ say: say(l, l.caret) });
  };

  el.addEventListener('focus', () => {
    const l = live.get();
    if (l) go(l.caret ?? { v: 0, w: 0, l: 0 });
  });
  el.addEventListener('focusout', (e) => {
    if (!el.contains(e.relatedTarget as Node | null)) {
      el.tabIndex = 0;
      redraw();
    }
  });

  el.addEventListener('keydown', (e) => {
    const l = live.get();
    if (!l || (e.target as Element).closest('button')) return;
    const p = l.caret ?? { v: 0, w: 0, l: 0 },
      vs = l.verses,
      far = e.ctrlKey || e.altKey || e.metaKey,
      find = l.draft.phase === 'find';
    const move: Record<string, () => Place> = {
      ArrowLeft: () => (far ? byWord(vs, p, 1) : byLetter(vs, p, 1)),
      ArrowRight: () => (far ? byWord(vs, p, -1) : byLetter(vs, p, -1)),
      ArrowDown: () => byLine(sheet, p, 1),
      ArrowUp: () => byLine(sheet, p, -1),
      Home: () => (far ? { v: 0, w: 0, l: 0 } : { v: p.v, w: 0, l: 0 }),
      End: () => {
        const v = far ? vs.length - 1 : p.v;
        return { v, w: vs[v]!.words.length - 1, l: 0 };
      },
    };
    const own = Object.hasOwn(move, e.key) ? move[e.key] : undefined;
    if (own) go(own());
    else if (far)
      return; // the screen's own keys, as for undo
    else if (e.key === ' ') {
      act(p);
      speak();
    } else if (e.key === 'Enter') advance();
    else if (/^[1-9]$/.test(e.key) && find && l.rule) {
      live.count(p, Number(e.key));
      speak();
    } else if (e.key === 'e') live.set({ explained: p });
    else if (e.key === 'o') live.set({ open: { v: p.v, w: p.w } });
    else if (e.key === 's') {
      if (live.stops(l).movable(p.v, p.w)) live.moveStop(p.v, p.w);
    } else if (e.key === 'Escape' && l.explained) live.set({ explained: undefined, ask: false });
    else return;
    e.preventDefault();
  });
}
