// What a screen reader is told while the keyboard stays where it is: what Undo undid, which stop was
// moved, and which step begins.
import { join, t } from '../../i18n.ts';
import { sameMark } from '../../marking/pencils.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import { letterAt, letterName } from '../../text/names.ts';
import type { Mark } from '../../types.ts';

/** Says it at once. The same words once more are other text, or they would not be read again. */
export function say(words: string) {
  const again = practice.get()?.say === words;
  practice.set({ say: again ? `${words}\u00a0` : words });
}

/** Undoes, and says what. */
export function undo() {
  const was = practice.get();
  practice.undo();
  const now = practice.get();
  if (was && now && was.draft !== now.draft)
    say(
      t('say.undone', {
        what: [...marks(was, now), ...lengths(was, now), ...stops(was, now)].join('; '),
      }),
    );
}

/** Moves a stop, and says what has become of it, or why it stays. */
export function moveStop(v: number, w: number) {
  const p = practice.get();
  if (!p || p.elsewhere) return;
  const now = practice.stops(p);
  if (!now.movable(v, w)) return say(t('stop.none'));
  if (!practice.stopsMove(p)) return say(t('stop.stays'));
  practice.moveStop(v, w);
  say(t(now.after(v, w) ? 'stop.reads-on' : 'stop.stops'));
}

const has = (list: Mark[], m: Mark) => list.find((x) => sameMark(x, m));

/** Marks that one has and the other has not, and counts that differ. */
function marks(was: Practice, now: Practice): string[] {
  const name = (m: Mark) => letterName(letterAt(now.verses, m));
  const before = was.draft.marks;
  const after = now.draft.marks;
  const off = before.filter((m) => !has(after, m)).map(name);
  const on = after.filter((m) => !has(before, m)).map(name);
  const counted = after.filter((m) => (has(before, m) ?? m).count !== m.count);
  return [
    ...(off.length ? [t('say.unmarked', { n: off.length, letters: join(off) })] : []),
    ...(on.length ? [t('say.marked-again', { n: on.length, letters: join(on) })] : []),
    ...counted.map((m) =>
      t(m.count ? 'say.counted' : 'say.uncounted', { letter: name(m), n: m.count }),
    ),
  ];
}

/** Counts written once for all marks of a pencil, where they differ. */
function lengths({ draft: { lengths: before = {} } }: Practice, now: Practice): string[] {
  const after = now.draft.lengths ?? {};
  return now.pencils
    .filter(({ id }) => before[id] !== after[id])
    .map(({ id, name }) =>
      t(after[id] ? 'say.counted' : 'say.uncounted', { letter: name, n: after[id] ?? 0 }),
    );
}

/** Stops that differ. */
function stops(was: Practice, now: Practice): string[] {
  const [before, after] = [practice.stops(was), practice.stops(now)];
  const moved = new Map(
    [...was.draft.stops, ...now.draft.stops].map(([v, w]) => [`${v}.${w}`, [v, w]]),
  );
  return [...moved.values()]
    .filter(([v, w]) => before.after(v!, w!) !== after.after(v!, w!))
    .map(([v, w]) => {
      const verse = now.verses[v!]!;
      const what = t(after.after(v!, w!) ? 'stop.stops' : 'stop.reads-on');
      return t(w === verse.words.length - 1 ? 'stop.end' : 'stop.sign', { a: verse.a, what });
    });
}
