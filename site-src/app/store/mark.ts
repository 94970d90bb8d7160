// A mark outside the database, by which an emptied database is told from a new device: that a record
// was here, with no name. It goes when the family itself removes its last learner. Safari clears it
// together with the database, so that its absence says nothing.
import { note, noted } from '../notes.ts';
import { date, isWhole } from './checks.ts';
import type { Entry, Learner } from '../types.ts';

const KEY = 'sutur-record';

/** n: how many sessions there were; day: of the last one, or on which the first learner was made. */
export interface Mark {
  day: string;
  n: number;
}

/** What was here, if the mark is whole. */
export function readMark(): Mark | undefined {
  try {
    const { day, n } = JSON.parse(noted('device', KEY)) as Mark;
    return date(day) && isWhole(n, 1e6) ? { day, n } : undefined;
  } catch {
    return undefined; // there is none
  }
}

/**
 * Notes what is here, the newest session first; an empty record leaves the mark as it is. Where
 * nothing can be noted, an emptied database looks like a new device.
 */
export function markRecord(learners: Learner[], sessions: Entry[]) {
  if (!learners[0]) return;
  const day = sessions[0]?.day ?? learners[0].made.slice(0, 10);
  const mark: Mark = { day, n: sessions.length };
  note('device', KEY, JSON.stringify(mark));
}

/** The family has removed its last learner. */
export const forgetRecord = () => note('device', KEY, undefined);
