// What the one state holds, and what it begins with.
import type { Reading } from './actions/backup.ts';
import type { Safety } from './actions/safe.ts';
import type { Below } from './i18n.ts';
import type { Mark } from './store/mark.ts';
import type { Kept } from './store/store.ts';
import type { Reason } from './store/unavailable.ts';
import type { Install } from './offline/device.ts';
import type { Kept as Offline } from './offline/offline.ts';
import { people, type People } from './people.ts';
import type { Course } from './plan/course.ts';
import type { Practice } from './practice/practice.ts';
import type { Choice } from './screens/choose/choice.ts';
import type { Printing } from './screens/paper/printing.ts';
import type { Form, Opened, Removed } from './screens/record/kept.ts';
import type { Name, Screen } from './screens/screen.ts';
import type { Making, Received } from './screens/work/form.ts';
import type { Board } from './screens/shared/board.ts';
import type { TextError } from './text/fetch.ts';
import type { Catalogue, Draft, Learner, Ref, Route, Settings, Verse } from './types.ts';

export interface Notice {
  text: string;
  action?: { label: string; run: () => void };
  /** A second thing to do, which leaves the notice where it is. */
  more?: { label: string; run: () => void };
  hold?: boolean;
  name?: string;
  closed?: () => void;
}

export interface State extends Omit<Kept, 'settings'>, People {
  catalogue: Catalogue;
  route: Route;
  /** Those in effect: of the learner who is reading, else of the device, else the usual ones. */
  settings: Settings;
  /** Those of the device. */
  device: Partial<Settings>;
  /** The screens that have been fetched, or could not be. */
  screens: Partial<Record<Name, Screen | 'failed'>>;
  /** The first time: where to begin, and the place that was chosen by hand. */
  beginning: { way: 'forwards' | 'backwards' | 'chosen'; place?: Ref };
  /** Today: the card, once it has been fetched with what it computes with. */
  card: Pick<Screen, 'view' | 'drawn'> | 'failed' | undefined;
  /** Today: work that a teacher gave, once what shows it has been fetched. */
  work: Pick<Screen, 'view'> | 'failed' | undefined;
  /** Today: what is said of how the record is kept, once it has been fetched. */
  keeping: Pick<Screen, 'view' | 'leave'> | undefined;
  /** How the browser keeps the record, once it has been asked. */
  safety: Safety | undefined;
  /** What the browser offers for the home screen. */
  install: Install | undefined;
  /** Where there is no learner: the record that was here before. */
  was: Mark | undefined;
  /** Today: sessions that the learner has begun and not ended, the newest first. */
  unfinished: Draft[];
  /** The lines on screen and the marks on them. */
  practice: Practice | undefined;
  /** Why the lines that were asked for cannot be shown. */
  unreadable: TextError['code'] | undefined;
  /** What the planner works with, once it has been fetched. */
  course: Course | 'failed' | undefined;
  /** Rules: the juz in which the next rule is looked for; 0 for the next pages. */
  ahead: number;
  /** Record: how many sessions are listed. */
  listed: number;
  /** Record: the session that is shown by itself, as far as it has been read. */
  opened: Opened | undefined;
  /** Record: what is typed and not kept, by the id of the session, or `add` and the learner's. */
  forms: Record<string, Form>;
  /** Record: sessions that were removed and can be brought back, and how many are listed. */
  removed: Removed | undefined;
  /** Learner: the first verse of all, on which size and spacing are seen. */
  sample: Verse | 'failed' | undefined;
  /** Learner: whose removal is being asked about. */
  removing: Learner | undefined;
  /** In the one file: the page that is read, once it has been unpacked. */
  shown: Element | 'failed' | undefined;
  /** The choice of lines, from the first visit on. */
  choice: Choice | undefined;
  /** What is put into a link to work, or to a result. */
  making: Making | undefined;
  /** A link to work, or to a result, that was opened: what was chosen beside it. */
  received: Received | undefined;
  /** Why what another app has shared cannot be opened. */
  brought: Below<'brought'> | undefined;
  /** The shared screen, while it is shown. */
  board: Board | undefined;
  /** What is to be printed, while the print screen is shown. */
  printing: Printing | undefined;
  notice: Notice | undefined;
  /** The offer of a newer version. */
  newer: Notice | undefined;
  /** A backup that is about to be read. */
  reading: Reading | undefined;
  /** What asks before anything else can be done: draws a dialog, or nothing. */
  dialog: ((s: State) => unknown) | undefined;
  /** Whether the device kept what was written last. */
  kept: boolean;
  offline: Offline;
  /** Whether there is a network, as far as the browser knows. */
  online: boolean;
  /** Today: what the sign of what is kept says when it is opened, once it has been fetched. */
  keptHere: Pick<Screen, 'view'> | undefined;
  /** Why the record cannot be opened. */
  closed: Reason | undefined;
  /** Grows with every write of drafts that the lines have not made themselves. */
  draftWrites: number;
}

export const defaults: Settings = {
  learner: '',
  size: 1,
  spacing: 1,
  theme: 'auto',
  muttasil: 4,
  munfasil: 4,
  arid: 4,
  lin: 4,
};

export const first = {
  ...people,
  learners: [],
  sessions: [],
  taught: [],
  settings: defaults,
  device: {},
  screens: {},
  beginning: { way: 'forwards' },
  card: undefined,
  work: undefined,
  unfinished: [],
  practice: undefined,
  unreadable: undefined,
  course: undefined,
  ahead: 0,
  listed: 0,
  opened: undefined,
  forms: {},
  removed: undefined,
  sample: undefined,
  removing: undefined,
  shown: undefined,
  choice: undefined,
  making: undefined,
  received: undefined,
  board: undefined,
  printing: undefined,
  route: { name: 'today' },
  notice: undefined,
  newer: undefined,
  reading: undefined,
  dialog: undefined,
  kept: true,
  damaged: 0,
  reported: 0,
  draftWrites: 0,
  closed: undefined,
  offline: { kind: 'unknown' },
  online: true,
} as unknown as State;
