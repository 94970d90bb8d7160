// Opens and closes the enlarged word as the state says.
import { look } from '../../colour/ink.ts';
import { type Zoom, zoom } from '../../marking/zoom.ts';
import { t } from '../../i18n.ts';
import * as live from './live.ts';
import { act } from './passage.ts';

let shown: Zoom | undefined,
  at = '';

export function openWord(l: live.Live) {
  const key = l.open ? `${l.open.v}.${l.open.w}` : '';
  if (key === at) {
    shown?.update();
    return;
  }
  const before = shown;
  at = key;
  shown = undefined;
  before?.close();
  if (!l.open) return;
  const { v, w } = l.open,
    find = l.draft.phase === 'find' && !l.ask;
  shown = zoom({
    verses: l.verses,
    v,
    w,
    label: t('zoom.title'),
    look: look(l.rule?.family ?? ''),
    marked: (i) => find && !!live.marked(live.get() ?? l, { v, w, l: i }),
    choose: (i) => {
      act({ v, w, l: i });
      if (!find) live.set({ open: undefined });
    },
    closed: () => {
      if (at === key) {
        at = '';
        shown = undefined;
        live.set({ open: undefined });
      }
    },
  });
}
