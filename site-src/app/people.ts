// What is remembered of several learners while the page is open; a piece of the state.
import type { Outlook } from './plan/outlook.ts';
import type { switcher } from './screens/parts/switch.ts';

export interface People {
  /** The way to other learners on Today, which comes with the card. */
  switcher: typeof switcher | undefined;
  /** Whether a learner is being added, whose name is asked for. */
  adding: boolean;
  /** Everyone: what comes next for each learner, by id, as far as it has been computed. */
  outlooks: ReadonlyMap<string, Outlook>;
  /** Everyone: the ids of those who are ticked. */
  ticked: readonly string[];
  /** Where a session was begun, and leads back to. */
  home: 'today' | 'learners';
  /** Ids of those who are to read, with the learner, the lines that are opened next. */
  together: readonly string[];
}

export const people: People = {
  switcher: undefined,
  adding: false,
  outlooks: new Map(),
  ticked: [],
  home: 'today',
  together: [],
};
