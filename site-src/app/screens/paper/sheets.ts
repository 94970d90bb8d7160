// The practice sheet and the answer sheet: one list of rows, broken into lines and pages once,
// drawn twice.
import { html, nothing, render, type TemplateResult } from 'lit-html';
import { look } from '../../colour/ink.ts';
import { spanOf } from '../../marking/spans.ts';
import * as breaks from '../../paper/breaks.ts';
import { geometry, type Geometry } from '../../paper/geometry.ts';
import { keys, type Marks, marks, notes } from '../../paper/marks.ts';
import type { Options } from '../../paper/options.ts';
import { type Row, rows } from '../../paper/rows.ts';
import { rulesShown } from '../../plan/ladder.ts';
import { counts } from '../../text/counts.ts';
import { basmala, verses } from '../../text/data.ts';
import { linesName } from '../../text/names.ts';
import type { Catalogue, Event } from '../../types.ts';
import { answerHead, type Heads, nextHead, practiceHead } from './heads.ts';
import { type InkedWord, inkedWord } from './ink.ts';
import type { Job } from './job.ts';
import { type Passage, row } from './line.ts';
import { measure, type Measured } from './measure.ts';
import { page } from './page.ts';
import { totals } from './totals.ts';

/** The parts of a page that are measured before pages are broken; heights in pixels. */
interface Heights {
  /** The first head of either sheet: the taller's, so that the sheets are equal line by line. */
  first: number;
  /** The head of every page after it. */
  next: number;
  totals: number;
}

export interface SheetsLayout {
  sheet: 'lines';
  c: Catalogue;
  options: Options;
  passage: Passage;
  heads: Heads;
  heights: Heights;
  rows: Row[];
  /** The first row of each page. */
  starts: number[];
  found: Marks;
  /** Short names of the rules, by their index. */
  keys: Map<number, string>;
  /** Whether the totals have a page of their own. */
  totalsApart: boolean;
  inked: InkedWord[];
}

/** Measures the heads in box, which must be on the page, in full size. */
export async function layOutSheets(job: Job, box: HTMLElement): Promise<SheetsLayout> {
  const { c, options: o } = job;
  const [vs, opening] = await Promise.all([verses(c, o.from, o.to), basmala(c, o.from, o.to)]);
  const passage = { verses: vs, basmala: opening };
  const g = geometry(o);
  const found = marks(vs, rulesShown(c, o.rule, shownRules(job)));
  const short = keys(found);
  const heads = headsOf(job, found);
  const m = await measure(vs, g.em); // first: the heads are set in its font too
  try {
    const heights = heightsOf(c, heads, found, short, box);
    const all = rows(vs, m, g, !!o.from.w);
    const starts = startsOf(all, heights, g);
    return {
      sheet: 'lines',
      c,
      options: o,
      passage,
      heads,
      heights,
      rows: all,
      starts,
      found,
      keys: short,
      totalsApart: !totalsFit(all, starts, heights, g),
      inked: o.kind === 'practice' ? [] : inkedWords(job, passage, all, found, short, m),
    };
  } finally {
    m.drop();
  }
}

function shownRules({ options, learnt }: Job): Set<string> | 'all' {
  if (options.show === 'all') return 'all';
  return new Set(options.show === 'learnt' ? learnt.map((r) => r.id) : []);
}

function headsOf({ c, options: o, learner, learnt }: Job, found: Marks): Heads {
  const rule = c.rules.find((r) => r.id === o.rule);
  const taught = new Set(learnt.map((r) => r.id));
  return {
    title: linesName(c.surahs, o.from, o.to),
    rule,
    child: o.name ? (learner?.name ?? '') : '',
    learnt: rulesShown(c, o.rule, taught).map((i) => c.rules[i]!),
    places: rule ? (found.totals.get(c.rules.indexOf(rule)) ?? 0) : 0,
  };
}

function heightsOf(
  c: Catalogue,
  heads: Heads,
  found: Marks,
  short: Map<number, string>,
  box: HTMLElement,
): Heights {
  const heightOf = (x: TemplateResult) => {
    render(page(c, 'measure', 0, 0, x), box);
    return Math.ceil(box.querySelector('.leaf > *')!.getBoundingClientRect().height);
  };
  return {
    first: Math.max(heightOf(practiceHead(heads)), heightOf(answerHead(heads))),
    next: heightOf(nextHead(heads, 'answer')),
    totals: heightOf(totals(c, found, short)),
  };
}

const startsOf = (all: Row[], { first, next }: Heights, g: Geometry) =>
  breaks.pages(
    all.map((r) => 'head' in r),
    Math.floor((g.room - first) / g.pitch),
    Math.floor((g.room - next) / g.pitch),
  );

/** Whether the totals fit below the last line. */
function totalsFit(all: Row[], starts: number[], h: Heights, g: Geometry): boolean {
  const head = starts.length > 1 ? h.next : h.first;
  const last = all.length - starts.at(-1)!;
  return head + last * g.pitch + h.totals <= g.room;
}

function inkedWords(
  { c, settings }: Job,
  { verses }: Passage,
  all: Row[],
  found: Marks,
  short: Map<number, string>,
  m: Measured,
): InkedWord[] {
  const count = (e: Event) => counts(c.rules[e.rule]!, e, settings).want;
  return all
    .flatMap((r) => ('head' in r ? [] : r.words))
    .map((at) => {
      const word = verses[at.v]!.words[at.w]!;
      const hits = found.hits[at.v]![at.w]!;
      const spans = hits.map((h) => spanOf(h, look(c.rules[h.e.rule]!.family)));
      return inkedWord(word, at, spans, m, notes(word, hits, count, short));
    });
}

type Sheet = 'practice' | 'answer';

/** The sheets that were asked for. */
const sheetsOf = ({ options: { kind } }: SheetsLayout): Sheet[] =>
  kind === 'both' ? ['practice', 'answer'] : [kind as Sheet];

/** How many pages a sheet has. */
const pageCountOf = (l: SheetsLayout, sheet: Sheet) =>
  l.starts.length + (sheet === 'answer' && l.totalsApart ? 1 : 0);

export const sheetsPageCount = (l: SheetsLayout): number =>
  sheetsOf(l).reduce((n, x) => n + pageCountOf(l, x), 0);

export const sheetsPages = (l: SheetsLayout) => sheetsOf(l).flatMap((x) => pagesOfSheet(l, x));

function pagesOfSheet(l: SheetsLayout, sheet: Sheet) {
  const { c, heads, heights, starts } = l;
  const answers = sheet === 'answer';
  const of = pageCountOf(l, sheet);
  const sum = answers ? totals(c, l.found, l.keys) : nothing;
  const firstHead = answers ? answerHead : practiceHead;
  const out = starts.map((start, i) => {
    const head = i ? nextHead(heads, sheet, heights.next) : firstHead(heads, heights.first);
    const set = l.rows.slice(start, starts[i + 1]).map((r) => row(c, l.passage, r, answers));
    const below = i + 1 === starts.length && !l.totalsApart ? sum : nothing;
    return page(
      c,
      sheet,
      i + 1,
      of,
      html`${head}
        <div class="rows">${set}</div>
        ${below}`,
    );
  });
  if (of > out.length) out.push(page(c, sheet, of, of, html`${nextHead(heads, sheet)}${sum}`));
  return out;
}
