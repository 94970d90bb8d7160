// What the print screen does: reads the address, changes it, and has the pages laid out anew.
import { defaults } from '../../paper/defaults.ts';
import { learnt } from '../../paper/learnt.ts';
import { format, hasLines, type LinesOf, type Options, parse } from '../../paper/options.ts';
import { MOST, span } from '../../paper/passage.ts';
import type { Problem } from '../../paper/query.ts';
import { child } from '../../planner.ts';
import * as state from '../../state.ts';
import { TextError } from '../../text/data.ts';
import { type Offer, offersFor } from './better.ts';
import { type Layout, layOut, sidesToDraw } from './layout.ts';

/** What the print screen remembers. */
export interface Printing {
  options: Options;
  /** What the address says wrong, or why there are no pages. */
  problem: Problem | undefined;
  /** The pages that were laid out last; they stay until there are others. */
  layout: Layout | undefined;
  /** Of a booklet, how many sides of paper are drawn. */
  drawn: number;
  /** Whether pages are being laid out. */
  busy: boolean;
  /** How far that is, 0 to 1; undefined where it takes no time. */
  progress: number | undefined;
  /** Whether somebody stopped it. */
  stopped: boolean;
  /** Lines with more places of the rule, where these have few. */
  offers: Offer[];
  /** The lines before such lines were taken. */
  before: LinesOf | undefined;
}

/** Nothing under way. */
const CALM = { busy: false, progress: undefined, stopped: false };
const BUSY = { ...CALM, busy: true, offers: [] };

/** How long (ms) a slider must rest before its pages are laid out. */
const REST = 150;

/** Time (ms) for the words that say so to be seen before the work. */
const SEEN = 20;

/** Sides of paper that are drawn at once. */
const AT_ONCE = 2;

/** How far the work is when the pages are laid out, and are to be drawn. */
const LAID_OUT = 0.8;

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
  const { layout, drawn = 0 } = printing ?? {};
  state.set({ printing: { layout, drawn, ...BUSY, before: undefined, ...read } });
  schedule(0);
}

/** Changes what is chosen; the address follows, and the pages. before are lines to go back to. */
export function change(patch: Partial<Options>, before?: LinesOf) {
  const { catalogue, printing } = state.get();
  if (!printing) return;
  const options = { ...printing.options, ...patch };
  history.replaceState(history.state, '', format(catalogue, options));
  const kept = 'from' in patch || 'to' in patch || 'kind' in patch ? before : printing.before;
  put({ ...BUSY, options, problem: undefined, before: kept });
  const resized = 'size' in patch || options.booklet.size !== printing.options.booklet.size;
  schedule(resized ? REST : 0);
}

/** Changes something about the booklet. */
export function changeBooklet(patch: Partial<Options['booklet']>) {
  const { printing } = state.get();
  if (printing) change({ booklet: { ...printing.options.booklet, ...patch } });
}

/** Ends work that takes long. */
export function stop() {
  clearTimeout(timer);
  asked++;
  put({ ...CALM, stopped: true, layout: undefined });
}

/** Begins it again. */
export function layOutAgain() {
  put(BUSY);
  schedule(0);
}

/** Forgets the pages. */
export function leavePrinting() {
  clearTimeout(timer);
  asked++;
  state.set({ printing: undefined });
}

function schedule(ms: number) {
  clearTimeout(timer);
  asked++; // what is under way is not wanted any more
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
  await pause(SEEN);
  const learner = state.learner();
  const taught = learner ? state.taughtOf(learner.id) : [];
  const step = async (progress: number) => {
    if (mine === asked) put({ progress: progress * LAID_OUT });
    await pause(0);
    if (mine !== asked) throw new Error('stopped');
  };
  try {
    const layout = await layOut({ c, options, learner, learnt: learnt(c, taught), settings, step });
    if (mine !== asked) return;
    await drawAll(layout, step);
    put({ ...CALM, layout, drawn: Infinity });
    const offers = await offersFor(layout);
    if (mine === asked) put({ offers });
  } catch (e) {
    if (mine !== asked) return;
    if (!(e instanceof TextError)) throw e;
    fail({ key: `error.${e.code}`, vars: {} });
  }
}

/** Draws the sides of a booklet a few at a time. */
async function drawAll(layout: Layout, step: (progress: number) => Promise<void>) {
  const sides = sidesToDraw(layout);
  for (let drawn = AT_ONCE; drawn < sides; drawn += AT_ONCE) {
    put({ layout, drawn });
    await step(1 + (1 / LAID_OUT - 1) * (drawn / sides));
  }
}

const pause = (ms: number) => new Promise((seen) => setTimeout(seen, ms));

const fail = (problem: Problem) => put({ ...CALM, problem, layout: undefined });
