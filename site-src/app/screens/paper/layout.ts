// What has been laid out: the pages of the print screen are drawn from it. English is set in a font
// of the device, of any width, so all of it is measured, out of sight, before it is drawn.
import { type BookletLayout, layOutBooklet } from './booklet/layout.ts';
import { sideView } from './booklet/pages.ts';
import { type CardLayout, cardPages, layOutCard } from './card.ts';
import type { InkedWord } from './ink.ts';
import type { Job } from './job.ts';
import { inHiddenPages } from './measure.ts';
import { layOutRecord, type RecordLayout, recordPages } from './record.ts';
import { layOutSheets, type SheetsLayout, sheetsPageCount, sheetsPages } from './sheets.ts';

export type Layout = SheetsLayout | CardLayout | RecordLayout | BookletLayout;

/** Fails with a TextError where the text cannot be had. */
export const layOut = (job: Job): Promise<Layout> =>
  inHiddenPages<Layout>(job.options, (box) => {
    if (job.options.kind === 'booklet') return layOutBooklet(job, box);
    if (job.options.kind === 'record') return layOutRecord(job, box);
    if (job.options.kind === 'card') return layOutCard(job, box);
    return layOutSheets(job, box);
  });

/** The sides of paper as they are printed, of many pages the first so many. */
export function sidesOf(l: Layout, drawn: number) {
  if (l.sheet === 'booklet') return l.sides.slice(0, drawn).map((_, i) => sideView(l, i));
  if (l.sheet === 'record') return recordPages(l);
  if (l.sheet === 'card') return cardPages(l);
  return sheetsPages(l);
}

/** How many sides are drawn a few at a time; 0 where all are at once. */
export const sidesToDraw = (l: Layout): number => (l.sheet === 'booklet' ? l.sides.length : 0);

export function pageCount(l: Layout): number {
  if (l.sheet === 'booklet') return l.leaves.length;
  if (l.sheet === 'record') return 1;
  return l.sheet === 'card' ? l.sides.length : sheetsPageCount(l);
}

/** The words that are painted, in the order of the pages; a booklet's are painted page by page. */
export const inkedOf = (l: Layout): InkedWord[] =>
  l.sheet === 'lines' || l.sheet === 'card' ? l.inked : [];
