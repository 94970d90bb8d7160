import type { Options } from '../../paper/options.ts';
import type { Catalogue, Learner, Rule, Settings } from '../../types.ts';

/** What is to be laid out, and for whom. */
export interface Job {
  c: Catalogue;
  options: Options;
  learner: Learner | undefined;
  /** The rules the learner has been taught, in teaching order. */
  learnt: Rule[];
  settings: Settings;
  /**
   * Is told how far long work has come, 0 to 1, and lets the page draw. Fails where the work is not
   * wanted any more.
   */
  step?: (done: number) => Promise<void>;
}
