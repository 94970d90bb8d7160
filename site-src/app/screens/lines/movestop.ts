// A press on a place to stop, or its key.
import { t } from '../../i18n.ts';
import * as practice from '../../practice/practice.ts';

/** Moves a stop, and has a screen reader say what has become of it, or why it stays. */
export function moveStop(v: number, w: number) {
  const p = practice.get();
  if (!p || p.elsewhere) return;
  const now = practice.stops(p);
  const say = (key: 'stop.stays' | 'stop.none' | 'stop.stops' | 'stop.reads-on') =>
    practice.set({ say: t(key) });
  if (!now.movable(v, w)) return say('stop.none');
  if (!practice.stopsMove(p)) return say('stop.stays');
  practice.moveStop(v, w);
  say(now.after(v, w) ? 'stop.reads-on' : 'stop.stops');
}
