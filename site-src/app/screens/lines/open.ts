// Opens lines: the text, what was marked in them before, and the claim on them.
import { choose } from '../../actions/learner.ts';
import { afterFrame } from '../../idle.ts';
import { loadCourse } from '../../planner.ts';
import { claim, letGo } from '../../practice/claim.ts';
import { fitted, fresh } from '../../practice/draft.ts';
import * as practice from '../../practice/practice.ts';
import { type Read, readLines } from '../../practice/reading.ts';
import { linesHash } from '../../share/link.ts';
import * as state from '../../state.ts';
import { readOpening, TextError } from '../../text/data.ts';
import type { Draft, Lines } from '../../types.ts';

/** Tells visits of the screen apart: what an earlier one asked for is not shown. */
let visit = 0;

export async function open(want: Lines) {
  const mine = ++visit;
  const { catalogue } = state.get();
  const who = state.learner()?.id ?? '';
  try {
    const read = await readLines(catalogue, who, want);
    if (mine !== visit) return;
    practice.begin(opened(read, who, want));
    join(who);
    named();
    addEventListener('pagehide', letGo);
    addEventListener('pageshow', again);
    // The letters come first; what is around them, and the claim, a moment later.
    afterFrame(() => {
      if (mine !== visit) return;
      practice.set({});
      claim();
    });
    // For the place after the session, and for lines that begin a surah; both can do without.
    setTimeout(() => {
      if (mine !== visit) return;
      loadCourse().catch(() => undefined);
      readOpening(catalogue).catch(() => undefined);
    }, 2000);
  } catch (e) {
    if (!(e instanceof TextError)) throw e;
    if (mine === visit) state.set({ unreadable: e.code });
  }
}

/** The lines as they were left, or fresh. */
export function opened({ draft, ...text }: Read, who: string, want: Lines) {
  const left = draft ? fitted(withPencils(draft, want), text.verses) : fresh(who, want);
  return practice.opened({ ...text, draft: left });
}

/** A draft with the pencils that the address asks for as well. */
function withPencils(d: Draft, { also = [] }: Lines): Draft {
  const all = [...new Set([...(d.lines.also ?? []), ...also])];
  return all.length ? { ...d, lines: { ...d.lines, also: all } } : d;
}

/** Those who are to read the lines as well are kept with them. */
function join(learner: string) {
  const { together } = state.get();
  if (!together.length) return;
  state.set({ together: [] });
  practice.change({ together: together.filter((id) => id !== learner) }, { opening: true });
}

/** Opens the same lines for another learner. */
export async function openFor(id: string) {
  const lines = practice.get()?.draft.lines;
  const { route } = state.get();
  if (route.name !== 'lines') return;
  close();
  await choose(id);
  if (state.get().route === route) void open(lines ?? route.lines);
}

/** The address names the pencils that there are. */
function named() {
  const lines = practice.get()?.draft.lines;
  if (!lines || linesHash(lines) === location.hash) return;
  history.replaceState(history.state, '', linesHash(lines));
  state.set({ route: { name: 'lines', lines } });
}

/** A page that is shown again as it was left takes its lines in hand again. */
const again = (e: PageTransitionEvent) => {
  if (e.persisted) claim();
};

/** The lines are left. */
export function close() {
  visit++;
  removeEventListener('pagehide', letGo);
  removeEventListener('pageshow', again);
  letGo();
  practice.leave();
}
