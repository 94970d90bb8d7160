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
import { boxes, boxesToFill, hasBoxes, rulesOf, sheetPencils } from './pencils.ts';
import { totals } from './totals.ts';

/** The parts of a page that are measured before pages are broken; heights in pixels. */
interface Heights {
  /** The first head of either sheet: the taller's, so that the sheets are equal line by line. */
  first: number;
  /** The head of every page after it. */
  next: number;
  /** What stands below the last line of each sheet; 0 for nothing. */
  foot: Record<Sheet, number>;
}

type Sheet = 'practice' | 'answer';

/** What is said about the lines, above and below them. */
interface About {
  c: Catalogue;
  passage: Passage;
  heads: Heads;
  found: Marks;
  /** Short names of the rules, by their index. */
  keys: Map<number, string>;
}

export interface SheetsLayout extends About {
  sheet: 'lines';
  options: Options;
  heights: Heights;
  rows: Row[];
  /** The first row of each page. */
  starts: number[];
  /** Whether what stands below the last line has a page of its own. */
  apart: Record<Sheet, boolean>;
  inked: InkedWord[];
}

/** Measures the heads in box, which must be on the page, in full size. */
export async function layOutSheets(job: Job, box: HTMLElement): Promise<SheetsLayout> {
  const { c, options: o } = job;
  const [vs, opening] = await Promise.all([verses(c, o.from, o.to), basmala(c, o.from, o.to)]);
  const passage = { verses: vs, basmala: opening };
  const g = geometry(o);
  const found = marks(vs, shownRules(job));
  const heads = headsOf(job, found);
  const about = { c, passage, heads, found, keys: keys(found) };
  const m = await measure(vs, g.em); // first: the heads are set in its font too
  try {
    const heights = heightsOf(about, box);
    const all = rows(vs, m, g, !!o.from.w);
    const starts = startsOf(all, heights, g);
    const apart = (x: Sheet) =>
      heights.foot[x] > 0 && !fits(heights.foot[x], all, starts, heights, g);
    return {
      ...about,
      sheet: 'lines',
      options: o,
      heights,
      rows: all,
      starts,
      apart: { practice: apart('practice'), answer: apart('answer') },
      inked: o.kind === 'practice' ? [] : inkedWords(job, about, all, m),
    };
  } finally {
    m.drop();
  }
}

/** The rules whose places are shown, those to find first. */
function shownRules(job: Job): number[] {
  const { c, options, learnt } = job;
  const taught = options.show === 'learnt' ? learnt.map((r) => r.id) : [];
  const more = rulesShown(c, '', options.show === 'all' ? 'all' : new Set(taught));
  return [...new Set([...rulesOf(job), ...more])];
}

function headsOf(job: Job, found: Marks): Heads {
  const { c, options: o, learner, learnt } = job;
  const taught = new Set([...o.also, ...learnt.map((r) => r.id)]);
  return {
    title: linesName(c.surahs, o.from, o.to),
    pencils: sheetPencils(job, found),
    child: o.name ? (learner?.name ?? '') : '',
    learnt: rulesShown(c, o.rule, taught).map((i) => c.rules[i]!),
  };
}

/** What stands below the last line: the totals on the answer sheet, on the other boxes to fill. */
function footOf({ c, passage: { verses }, heads, found, keys }: About, sheet: Sheet) {
  if (sheet === 'answer') return totals(c, found, keys, boxes(verses, heads.pencils, true));
  return hasBoxes(heads.pencils) ? boxesToFill(verses, heads.pencils) : undefined;
}

function heightsOf(l: About, box: HTMLElement): Heights {
  const { c, heads } = l;
  const heightOf = (x: TemplateResult | undefined) => {
    if (!x) return 0;
    render(page(c, 'measure', 0, 0, x), box);
    return Math.ceil(box.querySelector('.leaf > *')!.getBoundingClientRect().height);
  };
  return {
    first: Math.max(heightOf(practiceHead(heads)), heightOf(answerHead(heads))),
    next: heightOf(nextHead(heads, 'answer')),
    foot: { practice: heightOf(footOf(l, 'practice')), answer: heightOf(footOf(l, 'answer')) },
  };
}

const startsOf = (all: Row[], { first, next }: Heights, g: Geometry) =>
  breaks.pages(
    all.map((r) => 'head' in r),
    Math.floor((g.room - first) / g.pitch),
    Math.floor((g.room - next) / g.pitch),
  );

/** Whether a foot fits below the last line. */
function fits(foot: number, all: Row[], starts: number[], h: Heights, g: Geometry): boolean {
  const head = starts.length > 1 ? h.next : h.first;
  const last = all.length - starts.at(-1)!;
  return head + last * g.pitch + foot <= g.room;
}

function inkedWords(
  { c, settings }: Job,
  { passage: { verses }, found, keys }: About,
  all: Row[],
  m: Measured,
): InkedWord[] {
  const count = (e: Event) => counts(c.rules[e.rule]!, e, settings).want;
  return all
    .flatMap((r) => ('head' in r ? [] : r.words))
    .map((at) => {
      const word = verses[at.v]!.words[at.w]!;
      const hits = found.hits[at.v]![at.w]!;
      const spans = hits.map((h) => spanOf(h, look(c.rules[h.e.rule]!.family)));
      return inkedWord(word, at, spans, m, notes(word, hits, count, keys));
    });
}

/** The sheets that were asked for. */
const sheetsOf = ({ options: { kind } }: SheetsLayout): Sheet[] =>
  kind === 'both' ? ['practice', 'answer'] : [kind as Sheet];

/** How many pages a sheet has. */
const pageCountOf = (l: SheetsLayout, sheet: Sheet) => l.starts.length + (l.apart[sheet] ? 1 : 0);

export const sheetsPageCount = (l: SheetsLayout): number =>
  sheetsOf(l).reduce((n, x) => n + pageCountOf(l, x), 0);

export const sheetsPages = (l: SheetsLayout) => sheetsOf(l).flatMap((x) => pagesOfSheet(l, x));

function pagesOfSheet(l: SheetsLayout, sheet: Sheet) {
  const { c, heads, heights, starts } = l;
  const answers = sheet === 'answer';
  const of = pageCountOf(l, sheet);
  const foot = footOf(l, sheet) ?? nothing;
  const firstHead = answers ? answerHead : practiceHead;
  const out = starts.map((start, i) => {
    const head = i ? nextHead(heads, sheet, heights.next) : firstHead(heads, heights.first);
    const set = l.rows.slice(start, starts[i + 1]).map((r) => row(c, l.passage, r, answers));
    const below = i + 1 === starts.length && !l.apart[sheet] ? foot : nothing;
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
  if (of > out.length) out.push(page(c, sheet, of, of, html`${nextHead(heads, sheet)}${foot}`));
  return out;
}
