// The practice sheet and the answer sheet: one list of rows, broken into lines and pages once,
// drawn twice.
import type { Catalogue, Event, Settings, Verse } from '../../types.ts';
import * as breaks from '../../print/breaks.ts';
import { keys, type Marks, marks } from '../../print/marks.ts';
import type { Options } from '../../print/options.ts';
import { geometry, type Geometry } from '../../print/paper.ts';
import { shown } from '../../plan/ladder.ts';
import { counts } from '../../text/counts.ts';
import { linesName } from '../../text/names.ts';
import { h } from '../../dom.ts';
import { Ink } from './ink.ts';
import { answerHead, type Heads, leaf, nextHead, number, practiceHead } from './leaf.ts';
import { type Answers, type At, heading, line } from './lines.ts';
import { measure, type Measured } from './measure.ts';
import { totals } from './totals.ts';

export interface Job {
  c: Catalogue;
  verses: Verse[];
  basmala: string;
  options: Options;
  taught: ReadonlySet<string>;
  settings: Settings;
  child: string;
}
type Row = { head: number } | { at: At[] };

/**
 * What the ring at a verse's end takes with the space after it, in letter sizes. As in the style
 * sheet.
 */
const RING = 0.75;

/**
 * Rows of the passage: surahs' heads, and lines of whole words; within says that it begins inside a
 * verse.
 */
export function rows(verses: Verse[], m: Measured, g: Geometry, within: boolean): Row[] {
  const out: Row[] = [];
  for (let v = 0; v < verses.length;) {
    const first = v,
      at: At[] = [];
    if (verses[v]!.a === 1 && !(within && v === 0)) out.push({ head: verses[v]!.s });
    for (; v < verses.length && verses[v]!.s === verses[first]!.s; v++)
      verses[v]!.words.forEach((_, w) => at.push({ v, w }));
    const pieces = at.map((x) => {
      const end = x.w === verses[x.v]!.words.length - 1 && !verses[x.v]!.open;
      return { width: m.words[x.v]![x.w]! + (end ? RING : 0), end };
    });
    // The space after the last word is set too, and is empty paper.
    const starts = breaks.lines(pieces, m.space, g.line / g.em - m.space);
    starts.forEach((s, i) => out.push({ at: at.slice(s, starts[i + 1]) }));
  }
  return out;
}

/** Builds the pages into box, which must be on screen, unscaled: heads are measured there. */
export async function sheets(job: Job, box: HTMLElement, ink: Ink): Promise<HTMLElement[]> {
  const { c, verses, options: o } = job,
    g = geometry(o.paper, o.turn, o.size);
  const show = { focus: new Set<string>(), learnt: job.taught, all: 'all' as const }[o.show];
  const found = marks(verses, shown(c, o.rule, show)),
    short = keys(found),
    count = (e: Event) => counts(c.rules[e.rule]!, e, job.settings).want;
  const m = await measure(verses, g.em);
  try {
    return pages(job, box, g, {
      list: rows(verses, m, g, !!o.from.w),
      found,
      short,
      answers: { hits: found.hits, count, measured: m, keys: short, ink },
    });
  } finally {
    m.drop();
  }
}

interface Laid {
  list: Row[];
  found: Marks;
  short: Map<number, string>;
  answers: Answers;
}

function pages(
  { c, verses, options: o, ...job }: Job,
  box: HTMLElement,
  g: Geometry,
  { list: all, found, short, answers }: Laid,
): HTMLElement[] {
  const rule = c.rules.find((r) => r.id === o.rule),
    learnt = shown(c, o.rule, job.taught).map((i) => c.rules[i]!);
  const heads: Heads = {
    title: linesName(c.surahs, o.from, o.to),
    rule,
    child: o.name ? job.child : '',
    learnt,
    places: rule ? (found.totals.get(c.rules.indexOf(rule)) ?? 0) : 0,
  };
  // Both first heads take the height of the taller, so that line by line the sheets can lie side by
  // side.
  const high = tallest(box, c, [practiceHead(heads), answerHead(heads)]),
    next = tallest(box, c, [nextHead(heads, 'answer')]);
  const first = Math.floor((g.room - high) / g.pitch),
    rest = Math.floor((g.room - next) / g.pitch);
  const starts = breaks.pages(
      all.map((r) => 'head' in r),
      first,
      rest,
    ),
    out: HTMLElement[] = [];
  for (const kind of o.kind === 'both'
    ? (['practice', 'answer'] as const)
    : [o.kind as 'practice' | 'answer']) {
    const leaves = starts.map((s, i) => {
      const head = i
        ? nextHead(heads, kind)
        : (kind === 'answer' ? answerHead : practiceHead)(heads);
      head.style.blockSize = `${i ? next : high}px`;
      return leaf(
        c,
        kind,
        i + 1,
        head,
        h(
          'div',
          { class: 'rows' },
          all
            .slice(s, starts[i + 1])
            .map((r) =>
              'head' in r
                ? heading(c, r.head, job.basmala)
                : line(c, verses, r.at, kind === 'answer' ? answers : undefined),
            ),
        ),
      );
    });
    if (kind === 'answer') sum(leaves, c, found, short, box, g, () => nextHead(heads, 'answer'));
    number(leaves);
    out.push(...leaves);
  }
  return out;
}

/** The totals: below the last line where they fit, else on a page of their own. */
function sum(
  leaves: HTMLElement[],
  c: Catalogue,
  found: Marks,
  short: Map<number, string>,
  box: HTMLElement,
  g: Geometry,
  head: () => HTMLElement,
) {
  const block = totals(c, found, short),
    last = leaves[leaves.length - 1]!,
    rows = last.querySelectorAll('.row-line').length;
  const used =
    parseFloat(last.querySelector<HTMLElement>('.leaf-head')!.style.blockSize) + rows * g.pitch;
  const high = tallest(box, c, [block]);
  if (used + high <= g.room) last.querySelector('.rows')!.after(block);
  else leaves.push(leaf(c, 'answer', leaves.length + 1, head(), block));
}

function tallest(box: HTMLElement, c: Catalogue, parts: HTMLElement[]): number {
  return Math.max(
    ...parts.map((p) => {
      const l = leaf(c, 'measure', 0, p);
      box.append(l);
      const n = p.getBoundingClientRect().height;
      l.remove();
      return Math.ceil(n);
    }),
  );
}
