// The one state. Screens are functions of it; whatever changes it calls set, and the page is drawn
// again once.
import { memo } from './memo.ts';
import { defaults, first, type State } from './shape.ts';
import type { Book } from './text/explain.ts';
import type { Entry, Learner, Settings, Taught } from './types.ts';

export { defaults, type Notice, type State } from './shape.ts';

let state = first;

let draw: () => void = () => undefined;
let waiting = false;

export const get = (): Readonly<State> => state;

export const onChange = (f: () => void) => {
  draw = f;
};

export function set(patch: Partial<State>) {
  state = { ...state, ...patch };
  if ('device' in patch || 'learners' in patch) state.settings = inEffect();
  if (waiting) return;
  waiting = true;
  queueMicrotask(() => {
    waiting = false;
    draw();
  });
}

/** The settings in effect, the same as before where none has changed. */
function inEffect(): Settings {
  const { device, learners, settings: was } = state;
  const reading = { learners, settings: { ...defaults, ...device } } as State;
  const now: Settings = { ...reading.settings, ...learner(reading)?.own };
  const keys = Object.keys({ ...was, ...now }) as (keyof Settings)[];
  return keys.every((k) => now[k] === was[k]) ? was : now;
}

/** What is said of the rules, with the lengths that the family holds. */
export const book = (): Book => ({ ...state.catalogue, settings: state.settings });

/** What screens about the learner depend on. */
export const records = (): unknown[] => [
  state.learners,
  state.sessions,
  state.taught,
  state.settings.learner,
  state.closed,
];

/** The learners who are not archived. */
export const readers = (s: Readonly<State> = state): Learner[] =>
  s.learners.filter((l) => !l.archived);

/** The learner who is reading, if there is one yet. */
export function learner(s: Readonly<State> = state): Learner | undefined {
  const all = readers(s);
  return all.find((l) => l.id === s.settings.learner) ?? all[0];
}

const own = memo<Entry[]>();

export function sessionsOf(id: string): Entry[] {
  const { sessions } = state;
  return own([id, sessions], () => sessions.filter((x) => x.learner === id));
}

export const taughtOf = (id: string): Taught[] => state.taught.filter((x) => x.learner === id);
