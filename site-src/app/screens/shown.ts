// The part of the state that belongs to single screens: what has been fetched for them, and what
// they remember while they are shown.
import type { Draft, Learner, Verse } from '../types.ts';
import type { Choice } from './choose/choice.ts';
import type { Name, Screen } from './screen.ts';

export interface Shown {
  /** The screens that have been fetched, or could not be. */
  screens: Partial<Record<Name, Screen | 'failed'>>;
  /** Today: the card, once it has been fetched with what it computes with. */
  card: Pick<Screen, 'view' | 'drawn'> | 'failed' | undefined;
  /** Today: sessions that the learner has begun and left, the newest first. */
  left: Draft[];
  /** Rules: the juz in which the next rule is looked for; 0 for the next pages. */
  ahead: number;
  /** Record: how many sessions are listed. */
  listed: number;
  /** Learner: the first verse of all, on which size and spacing are seen. */
  sample: Verse | 'failed' | undefined;
  /** Learner: whose removal is being asked about. */
  removing: Learner | undefined;
  /** The choice of lines, from the first visit on. */
  choice: Choice | undefined;
}
