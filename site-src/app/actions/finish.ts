// Keeps a session and what follows from it, with a way back. It comes with the lines, so that
// keeping needs no network.
import * as state from '../state.ts';
import * as store from '../store/store.ts';
import { t } from '../i18n.ts';
import { child } from '../planner.ts';
import { countedMarks } from '../practice/steps.ts';
import { countsOf, type Outcomes } from '../record/entry.ts';
import { linesHash } from '../share/link.ts';
import { after, moved } from '../plan/place.ts';
import { units } from '../plan/units.ts';
import type { Draft, Outcome, Session, Taught } from '../types.ts';
import { keep } from './keep.ts';
import { asksQuietly, secure } from './safe.ts';
import { today } from '../record/week.ts';

const keeping = new Set<string>(); // sessions that are being kept

/** Keeps the session once, however often it is asked for; false if the device did not keep it. */
export async function finish(d: Draft, all: Outcomes[], outcome: Outcome): Promise<boolean> {
  if (keeping.has(d.id)) return true;
  keeping.add(d.id);
  calm();
  return save(d, all, outcome).finally(() => keeping.delete(d.id));
}

/** The second click of a double click must not hit what comes after the first. */
function calm() {
  const second = (e: MouseEvent) => {
    if (e.detail > 1) {
      e.preventDefault();
      e.stopPropagation();
    }
  };
  addEventListener('click', second, true);
  setTimeout(() => removeEventListener('click', second, true), 700);
}

async function save(d: Draft, all: Outcomes[], outcome: Outcome): Promise<boolean> {
  const c = state.get().catalogue;
  const who = state.get().learners.find((l) => l.id === d.learner);
  const at = new Date().toISOString();
  const { id, lines, stops, helped } = d;
  const session: Session = {
    id,
    learner: d.learner,
    day: today(),
    at,
    rule: lines.rule,
    from: lines.from,
    to: lines.to,
    marks: countedMarks(d),
    stops,
    ...countsOf(d, all),
    helped,
    outcome,
    ...minutes(d),
  };
  const held = child();
  const plan = held?.learner.id === d.learner ? held : undefined;
  const was = who?.place ?? lines.from;
  const place = plan ? moved(plan, lines) : (after(c, lines.to, who?.direction) ?? was);
  // A rule met for the first time is taught from today on, with the others of its lesson.
  const known = new Set(state.taughtOf(d.learner).map((x) => x.rule));
  const index = c.rules.findIndex((x) => x.id === lines.rule);
  const unit = units(c)
    .find((u) => u.rules.includes(index))
    ?.rules.map((x) => c.rules[x]!.id) ?? [lines.rule];
  const added: Taught[] =
    !lines.rule || known.has(lines.rule)
      ? []
      : unit
          .filter((x) => !known.has(x))
          .map((rule) => ({ learner: d.learner, rule, since: session.day, known: '' }));
  if (!(await keep(() => store.saveSession(session, d.at, place, added)))) return false;
  location.hash = '#/today';
  const there = state.get().sessions.some((s) => s.id === id);
  const undo = { label: t('undo'), run: () => void back(d, { was, now: place }, added) };
  state.set({
    notice: there ? { text: saved(), action: undo } : { text: t('end.gone'), hold: true },
  });
  if (there) void secure();
  return true;
}

/** Longest session (minutes) that is taken for one sitting. */
const SITTING = 60;

/** How long a session took, if it was one sitting. */
function minutes({ started }: Draft): Pick<Session, 'minutes'> {
  const n = Math.round((Date.now() - Date.parse(started)) / 60_000);
  return n >= 0 && n <= SITTING ? { minutes: Math.max(1, n) } : {};
}

/** With the first session that is kept here, what the browser is asked for now. */
const saved = () =>
  t(state.get().sessions.length === 1 && asksQuietly() ? 'end.saved-first' : 'end.saved');

/** Back to the question how it went. */
async function back(
  d: Draft,
  place: { was: Session['from']; now: Session['from'] },
  added: Taught[],
) {
  if (
    await keep(() => store.unsaveSession({ ...d, updated: new Date().toISOString() }, place, added))
  )
    location.hash = linesHash(d.lines);
}
