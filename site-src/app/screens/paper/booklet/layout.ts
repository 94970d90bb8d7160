// A juz as a booklet: what it holds, page by page, and which pages stand together on paper.
import { render } from 'lit-html';
import { ANSWER_SIZE } from '../../../paper/booklet.ts';
import { geometry, roomOf } from '../../../paper/geometry.ts';
import { sides } from '../../../paper/impose.ts';
import { type Leaf, leavesOf } from '../../../paper/leaves.ts';
import type { Options } from '../../../paper/options.ts';
import {
  countIn,
  ranges,
  type Room,
  type Table,
  tables,
  type VerseRange,
} from '../../../paper/ranges.ts';
import type { Catalogue } from '../../../types.ts';
import { boxes, fit } from '../fit.ts';
import type { InkedWord } from '../ink.ts';
import type { Job } from '../job.ts';
import { type Content, contentOf } from './content.ts';
import { answerLines, type LineSet, practiceLines } from './lines.ts';
import { leafView } from './pages.ts';

export interface BookletLayout extends Content {
  sheet: 'booklet';
  c: Catalogue;
  options: Options;
  /** The learner's name, empty where it is not written. */
  child: string;
  practice: LineSet;
  answer: LineSet | undefined;
  /** The words of the answers by verse, as they are painted. */
  inked: InkedWord[][];
  ranges: VerseRange[];
  /** Places by range and rule. */
  counts: number[][];
  tables: Table[][];
  /** Rules on a page of the key, and the height (mm) of each. */
  perKey: number;
  keyRow: number;
  leaves: Leaf[];
  /** The pages on each side of paper, from left to right. */
  sides: number[][];
  /** How much smaller the letters of a kind of page are made. */
  fits: Partial<Record<Leaf['is'], number>>;
}

/** Heights in millimetres of what stands on a page above a list, and of a rule in the key. */
const KEY_HEAD = 30;
const KEY_ROW = 8.5;
const KEY_ROW_MOST = 12;
const COUNTS_HEAD = 32;

/** Shares of the work: the lines, the answers; the rest is drawing. */
const LINES = 0.3;
const ALL_LINES = 0.75;

/** Fails with a TextError where the text cannot be had, and where job.step does. */
export async function layOutBooklet(job: Job, box: HTMLElement): Promise<BookletLayout> {
  const { c, options: o, learner } = job;
  const content = await contentOf(job);
  const answers = o.booklet.answers !== 'none' && content.pencils.length > 0;
  const between = (from: number, to: number) => async (share: number) =>
    job.step?.(from + share * (to - from));
  const practice = await practiceLines(
    content,
    geometry(o),
    between(0, answers ? LINES : ALL_LINES),
  );
  const marked = answers
    ? await answerLines(job, content, geometry(o, ANSWER_SIZE), between(LINES, ALL_LINES))
    : undefined;
  const list = ranges(content.passage.verses);
  const pages = {
    ...content,
    sheet: 'booklet' as const,
    c,
    options: o,
    child: o.name ? (learner?.name ?? '') : '',
    practice,
    answer: marked?.lines,
    inked: marked?.inked ?? [],
    ranges: list,
    counts: countIn(list, content.found.hits, [...content.found.totals.keys()]),
    tables: answers ? tables(list.length, content.pencils.length, tableRoom(o)) : [],
    ...keyOf(content.pencils.length, roomOf(o)[1] - KEY_HEAD),
  };
  const leaves = leavesOf(partsOf(pages), o.booklet);
  const layout = { ...pages, leaves, sides: sides(leaves.length, o.booklet.lay), fits: {} };
  await job.step?.(ALL_LINES);
  return { ...layout, fits: fitsOf(layout, box) };
}

/** The rules of the key have what room there is. */
function keyOf(rules: number, room: number): Pick<BookletLayout, 'perKey' | 'keyRow'> {
  const perKey = Math.floor(room / KEY_ROW);
  return { perKey, keyRow: Math.min(KEY_ROW_MOST, room / Math.max(1, Math.min(rules, perKey))) };
}

const partsOf = (
  l: Pick<BookletLayout, 'pencils' | 'perKey' | 'practice' | 'answer' | 'tables'>,
) => ({
  pencils: Math.max(1, Math.ceil(l.pencils.length / l.perKey)),
  practice: l.practice.starts.length,
  counts: l.tables.length,
  answer: l.answer?.starts.length ?? 0,
});

/** As in the style sheet. */
function tableRoom(o: Options): Room {
  const [width, high] = roomOf(o);
  return { width, height: high - COUNTS_HEAD, name: 41, column: 7.5, row: 5.5, gap: 6 };
}

/** What must hold what is in it, by kind of page. */
const PLACES = {
  cover: '.cover, .cover-head, .contents, .contents li',
  pencils: '.key-page, .key-list, .key-list li, .key-text',
  counts: '.counts-page, .tables, .tally th',
  days: '.days-page, .days th',
} as const;

/** Makes English fit, whatever font the device reads with; lines of text have their measure. */
function fitsOf(l: BookletLayout, box: HTMLElement): BookletLayout['fits'] {
  const first = (is: Leaf['is']) => l.leaves.findIndex((x) => x.is === is);
  const kinds = (Object.keys(PLACES) as (keyof typeof PLACES)[]).filter((is) => first(is) >= 0);
  render(
    l.leaves.flatMap((x, i) =>
      x.is === 'cover' || x.is === 'pencils' || x.is === 'counts' || i === first('days')
        ? leafView(l, i + 1)
        : [],
    ),
    box,
  );
  return Object.fromEntries(
    kinds.map((is) => {
      const of = `.leaf[data-sheet="${is}"]`;
      const inside = PLACES[is].split(', ').map((x) => `${of} ${x}`);
      return [is, fit(boxes(box, of), boxes(box, inside.join()))];
    }),
  );
}
