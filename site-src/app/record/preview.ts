// What reading a backup would do, before anything is written.
import type { Whole } from '../store/snapshot.ts';
import type { Learner } from '../types.ts';
import { change, merge } from './merge.ts';

/**
 * What a file would do to the record of a learner: sessions that are added, corrected, removed, and
 * left as they are; sessions of the file that were removed here, and stay so; rules whose dates
 * change; whether the learner is new, or the name, place or settings change.
 */
export interface Row {
  learner: Learner;
  isNew: boolean;
  other: boolean;
  added: number;
  corrected: number;
  removed: number;
  left: number;
  removedHere: number;
  rules: number;
}

/** A row for each learner of the file, in its order, and how many damaged records are set aside. */
export function preview(mine: Whole, file: Whole): { rows: Row[]; damaged: number } {
  const to = change(mine, merge(mine, file));
  const here = new Set(mine.sessions.map((x) => x.id));
  const goneHere = new Set(mine.gone.map((x) => x.id));
  const coming = new Set(to.sessions.map((x) => x.id));
  const rows = file.learners.map((learner) => {
    const own = <T extends { learner: string }>(list: T[]) =>
      list.filter((x) => x.learner === learner.id);
    const known = mine.learners.find((x) => x.id === learner.id);
    const isNew = !known;
    const sessions = own(file.sessions);
    return {
      learner: known ?? learner,
      isNew,
      other: !isNew && to.learners.some((x) => x.id === learner.id),
      added: own(to.sessions).filter((x) => !here.has(x.id)).length,
      corrected: own(to.sessions).filter((x) => here.has(x.id)).length,
      removed: own(to.removed).length,
      left: sessions.filter((x) => here.has(x.id) && !coming.has(x.id)).length,
      removedHere: sessions.filter((x) => goneHere.has(x.id) && !coming.has(x.id)).length,
      rules: own(to.taught).length,
    };
  });
  return { rows, damaged: to.damaged.length };
}

/** Whether a row changes anything here. */
export const changes = (row: Row) =>
  row.isNew || row.other || row.added + row.corrected + row.removed + row.rules > 0;

/** The records of some learners; what is damaged belongs to nobody and stays. */
export function ofLearners(k: Whole, ids: Set<string>): Whole {
  const own = <T extends { learner: string }>(list: T[]) => list.filter((x) => ids.has(x.learner));
  return {
    learners: k.learners.filter((x) => ids.has(x.id)),
    sessions: own(k.sessions),
    taught: own(k.taught),
    gone: own(k.gone),
    damaged: k.damaged,
  };
}

/** The file with the sessions that were removed here as if changed now, so that they come back. */
export function revived(mine: Whole, file: Whole, now: string): Whole {
  const goneHere = new Set(mine.gone.map((x) => x.id));
  return {
    ...file,
    sessions: file.sessions.map((x) => (goneHere.has(x.id) ? { ...x, updated: now } : x)),
  };
}
