// What the screens of the record remember.
import type { Problem, Typed } from '../../record/typed.ts';
import type { Entry, Gone, Session, Verse } from '../../types.ts';

/** A session that is shown by itself: with its marks, and the text of its lines. */
export interface Opened {
  /** What the record said of it when it was read. */
  entry: Entry;
  /** Undefined where its marks are damaged. */
  session: Session | undefined;
  verses: Verse[] | 'failed';
}

/** The form for a session. */
export interface Form {
  /** Whose session it is. */
  learner: string;
  typed: Typed;
  /** The session that is corrected; undefined where one is added. */
  was: Session | undefined;
  problems: Problem[];
  /** Whether anything was typed. */
  touched: boolean;
}

/** Sessions that were removed. */
export interface Removed {
  /** Whose they are. */
  learner: string;
  list: Gone[];
  /** How many are listed. */
  listed: number;
  /** Whose removal for good is asked about, by their ids. */
  asked: string[] | undefined;
}
