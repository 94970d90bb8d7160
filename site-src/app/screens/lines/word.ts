// Opens and closes the enlarged word as the state says.
import { look } from '../../colour/ink.ts';
import { t } from '../../i18n.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import { colours } from './colours.ts';
import { letterLabel } from './labels.ts';
import { type Zoom, zoom } from './zoom.ts';

let shown: Zoom | undefined;
let at = '';

export function openWord(p: Practice) {
  const key = p.open ? `${p.open.v}.${p.open.w}` : '';
  if (key === at) return shown?.update();
  const before = shown;
  at = key;
  shown = undefined;
  before?.close();
  if (p.open) shown = enlarge(p, p.open, key);
}

function enlarge(p: Practice, { v, w }: { v: number; w: number }, key: string): Zoom {
  const find = p.draft.phase === 'find' && !p.ask;
  return zoom({
    verses: p.verses,
    v,
    w,
    label: t('zoom.title'),
    look: look(practice.inHand(p)?.family ?? ''),
    said(l) {
      const now = practice.get() ?? p;
      return letterLabel(now, colours(now), p.verses[v]!.words[w]!, { v, w, l });
    },
    marked: (l) => (find ? !!practice.marked(practice.get() ?? p, { v, w, l }) : undefined),
    choose: (l) => {
      practice.choose({ v, w, l });
      if (!find) practice.set({ open: undefined });
    },
    closed: () => {
      if (at !== key) return;
      at = '';
      shown = undefined;
      practice.set({ open: undefined });
    },
  });
}
