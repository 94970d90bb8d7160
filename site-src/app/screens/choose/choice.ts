// What is chosen on the screen for lines, and what was found for it.
import type { Child } from '../../plan/child.ts';
import type { Ranking } from '../../plan/rank.ts';

/** The best lines for a rule (its index, -1 for reading alone) and who they were ranked for. */
export interface Best {
  child: Child;
  rule: number;
  ranking: Ranking;
}

export interface Choice {
  /** Id of the rule; empty for reading without one. */
  rule: string;
  /** Where the best lines are looked for: near the place (empty), a juz (j30), a surah (s78). */
  where: string;
  best: Best | 'failed' | undefined;
  surah: number;
  /** First and last verse, as typed. */
  from: string;
  to: string;
  /** Whether the verses were chosen by hand, so that no suggestion replaces them. */
  byHand: boolean;
  /** Places of the rule in the verses that were suggested. */
  places: number | undefined;
  /** Why lines cannot be opened, in words. */
  problem: string;
}
