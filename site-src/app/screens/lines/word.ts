// Opens and closes the enlarged word as the state says.
import { changeSettings } from '../../actions/settings.ts';
import { look } from '../../colour/ink.ts';
import { t } from '../../i18n.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import * as state from '../../state.ts';
import type { Place } from '../../types.ts';
import { colours } from './colours.ts';
import { letterLabel } from './labels.ts';
import { type Zoom, zoom } from './zoom.ts';

type Open = NonNullable<Practice['open']>;

let shown: Zoom | undefined;
let at = '';

/** A tap chooses its letter, or opens the word where it may have been meant for another. */
export function tap(at: Place, crowded: boolean) {
  const p = practice.get();
  const { large, toldLarge } = state.get().settings;
  if (!p || !practice.finding(p) || !(crowded || large)) return practice.choose(at);
  const why = !large && !toldLarge;
  practice.set({ open: { v: at.v, w: at.w, once: true, why } });
  if (why) void changeSettings({ toldLarge: true });
}

export function openWord(p: Practice) {
  const key = p.open ? `${p.open.v}.${p.open.w}` : '';
  if (key === at) return shown?.update();
  const before = shown;
  at = key;
  shown = undefined;
  before?.close();
  if (p.open) shown = enlarge(p, p.open, key);
}

function enlarge(p: Practice, { v, w, once, why }: Open, key: string): Zoom {
  const find = practice.finding(p);
  return zoom({
    verses: p.verses,
    v,
    w,
    label: t('zoom.title'),
    hint: t(why ? 'zoom.why' : 'zoom.hint'),
    look: look(practice.inHand(p)?.family ?? ''),
    said() {
      const now = practice.get() ?? p;
      const spans = colours(now);
      const word = p.verses[v]!.words[w]!;
      return word.letters.map((_, l) => letterLabel(now, spans, word, { v, w, l }));
    },
    marked: (l) => (find ? !!practice.marked(practice.get() ?? p, { v, w, l }) : undefined),
    choose: (l) => {
      practice.choose({ v, w, l });
      if (!find || once) practice.set({ open: undefined });
    },
    closed: () => {
      if (at !== key) return;
      at = '';
      shown = undefined;
      practice.set({ open: undefined });
    },
  });
}
