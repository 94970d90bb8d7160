// What the print screen does: reads the address, changes it, and has the pages laid out anew.
import { defaults } from '../../paper/defaults.ts';
import { learnt } from '../../paper/learnt.ts';
import { format, hasLines, type Options, parse, type Problem } from '../../paper/options.ts';
import { MOST, span } from '../../paper/passage.ts';
import { child } from '../../planner.ts';
import * as state from '../../state.ts';
import { TextError } from '../../text/data.ts';
import { type Layout, layOut } from './layout.ts';

/** What the print screen remembers. */
export interface Printing {
  options: Options;
  /** What the address says wrong, or why there are no pages. */
  problem: Problem | undefined;
  /** The pages that were laid out last; they stay until there are others. */
  layout: Layout | undefined;
  /** Whether pages are being laid out. */
  busy: boolean;
}

/** How long (ms) a slider must rest before its pages are laid out. */
const REST = 150;

/** Time (ms) for the words that say so to be seen before the work. */
const SEEN = 20;

let timer = 0;
/** The last layout that was asked for, by number. */
let asked = 0;

const put = (patch: Partial<Printing>) => {
  const { printing } = state.get();
  if (printing) state.set({ printing: { ...printing, ...patch } });
};

/** Follows the address. */
export function readAddress() {
  const { catalogue: c, printing } = state.get();
  const rule = c.rules[child()?.today.rule ?? -1]?.id ?? '';
  const usual = defaults(c, state.learner()?.place, rule, navigator.language);
  const read = parse(c, location.hash, usual);
  state.set({ printing: { layout: printing?.layout, ...read, busy: true } });
  schedule(0);
}

/** Changes what is chosen; the address follows, and the pages. */
export function change(patch: Partial<Options>) {
  const { catalogue, printing } = state.get();
  if (!printing) return;
  const options = { ...printing.options, ...patch };
  history.replaceState(history.state, '', format(catalogue, options));
  put({ options, problem: undefined, busy: true });
  schedule('size' in patch ? REST : 0);
}

/** Forgets the pages. */
export function leavePrinting() {
  clearTimeout(timer);
  asked++;
  state.set({ printing: undefined });
}

function schedule(ms: number) {
  clearTimeout(timer);
  timer = window.setTimeout(() => void makePages(), ms);
}

async function makePages() {
  const mine = ++asked;
  const { catalogue: c, settings, printing } = state.get();
  if (!printing) return;
  const { options } = printing;
  const n = span(c, options.from, options.to);
  if (hasLines(options) && n > MOST)
    return fail({ key: 'print.bad.many', vars: { n, most: MOST } });
  await new Promise((seen) => setTimeout(seen, SEEN));
  const learner = state.learner();
  const taught = learner ? state.taughtOf(learner.id) : [];
  try {
    const layout = await layOut({ c, options, learner, learnt: learnt(c, taught), settings });
    if (mine === asked) put({ layout, busy: false });
  } catch (e) {
    if (mine !== asked) return;
    if (!(e instanceof TextError)) throw e;
    fail({ key: `error.${e.code}`, vars: {} });
  }
}

const fail = (problem: Problem) => put({ problem, layout: undefined, busy: false });
