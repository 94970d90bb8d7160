// The one state. Screens are functions of it; whatever changes it calls set, and the screen is
// drawn again once.
import type { Catalogue, Entry, Learner, Route, Settings, Taught } from './types.ts';
import type { Kept as Offline } from './offline/offline.ts';
import type { Closed } from './store/closed.ts';
import type { Kept } from './store/store.ts';

export interface Notice {
  text: string;
  action?: { label: string; run: () => void };
  hold?: boolean;
  name?: string;
  closed?: () => void;
}

export interface State extends Omit<Kept, 'settings'> {
  catalogue: Catalogue;
  route: Route;
  settings: Settings;
  notice: Notice | undefined;
  kept: boolean;
  offline: Offline;
  closed?: Closed; // why the record could not be opened
  drafts: number; // grows when another tab has written drafts
}

export const defaults: Settings = {
  learner: '',
  size: 1,
  spacing: 1,
  theme: 'auto',
  madd: 4,
  arid: 4,
};

let state = {
  learners: [],
  sessions: [],
  taught: [],
  settings: defaults,
  route: { name: 'today' },
  notice: undefined,
  kept: true,
  aside: 0,
  told: 0,
  drafts: 0,
  offline: { kind: 'unknown' },
} as unknown as State;
let draw: () => void = () => undefined,
  waiting = false;

export const get = (): Readonly<State> => state;
export const onChange = (f: () => void) => {
  draw = f;
};

export function set(patch: Partial<State>) {
  state = { ...state, ...patch };
  if (waiting) return;
  waiting = true;
  queueMicrotask(() => {
    waiting = false;
    draw();
  });
}

/** What screens about the learner depend on. */
export const records = (): unknown[] => [
  state.learners,
  state.sessions,
  state.taught,
  state.settings.learner,
];

/** The learner in hand, if there is one yet. */
export const learner = (s: Readonly<State> = state): Learner | undefined =>
  s.learners.find((l) => l.id === s.settings.learner) ?? s.learners[0];

// the last answer: it is asked for at each drawing
let own: { id: string; of: Entry[]; list: Entry[] } = { id: '', of: [], list: [] };

export function sessionsOf(id: string): Entry[] {
  const of = state.sessions;
  if (own.id !== id || own.of !== of) own = { id, of, list: of.filter((x) => x.learner === id) };
  return own.list;
}

export const taughtOf = (id: string): Taught[] => state.taught.filter((x) => x.learner === id);
