// A session as it is kept, made of its draft, and what follows from it for its learner.
import { after, moved } from '../plan/place.ts';
import { units } from '../plan/units.ts';
import { child, childOf } from '../planner.ts';
import { countedMarks } from '../practice/steps.ts';
import { today } from '../record/week.ts';
import * as state from '../state.ts';
import type { Finished } from '../store/store.ts';
import type { Draft, Outcome, Session, Taught } from '../types.ts';

type Counts = 'id' | 'found' | 'missed' | 'extra';

/** All of a session but its id and its places. */
export function marked(d: Draft, learner: string, outcome: Outcome): Omit<Session, Counts> {
  const { lines, stops, helped } = d;
  return {
    learner,
    day: today(),
    at: new Date().toISOString(),
    rule: lines.rule,
    from: lines.from,
    to: lines.to,
    marks: countedMarks(d),
    stops,
    helped,
    outcome,
    ...minutes(d),
  };
}

/** The same where nobody knows whose the marks are. */
export const unmarked = (...of: Parameters<typeof marked>): Omit<Session, Counts> => ({
  ...marked(...of),
  marks: [],
});

/** Longest session (minutes) that is taken for one sitting. */
const SITTING = 60;

/** How long a session took, if it was one sitting. */
function minutes({ started }: Draft): Pick<Session, 'minutes'> {
  const n = Math.round((Date.now() - Date.parse(started)) / 60_000);
  return n >= 0 && n <= SITTING ? { minutes: Math.max(1, n) } : {};
}

/** The learner's place after a session, and the rules that are taught from its day on. */
export function follows(session: Session): Pick<Finished, 'place' | 'added'> {
  const { catalogue: c, learners } = state.get();
  const { learner: id, from, to } = session;
  const who = learners.find((l) => l.id === id);
  const held = child();
  const plan = held?.learner.id === id ? held : who && childOf(who);
  const was = who?.place ?? from;
  const now = plan ? moved(plan, { from, to }) : (after(c, to, who?.direction) ?? was);
  return { place: { was, now }, added: taughtBy(session) };
}

/** A rule met for the first time is taught from today on, with the others of its lesson. */
function taughtBy({ learner, rule, day }: Session): Taught[] {
  const { catalogue: c } = state.get();
  const known = new Set(state.taughtOf(learner).map((x) => x.rule));
  if (!rule || known.has(rule)) return [];
  const index = c.rules.findIndex((x) => x.id === rule);
  const unit = units(c)
    .find((u) => u.rules.includes(index))
    ?.rules.map((x) => c.rules[x]!.id) ?? [rule];
  return unit
    .filter((x) => !known.has(x))
    .map((x) => ({ learner, rule: x, since: day, known: '' }));
}
