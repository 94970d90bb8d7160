// What has been laid out: the pages of the print screen are drawn from it. English is set in a font
// of the device, of any width, so all of it is measured, out of sight, before it is drawn.
import { type CardLayout, cardPages, layOutCard } from './card.ts';
import type { InkedWord } from './ink.ts';
import type { Job } from './job.ts';
import { inHiddenPages } from './measure.ts';
import { layOutRecord, type RecordLayout, recordPages } from './record.ts';
import { layOutSheets, type SheetsLayout, sheetsPageCount, sheetsPages } from './sheets.ts';

export type Layout = SheetsLayout | CardLayout | RecordLayout;

/** Fails with a TextError where the text cannot be had. */
export const layOut = (job: Job): Promise<Layout> =>
  inHiddenPages<Layout>(job.options, (box) => {
    if (job.options.kind === 'record') return layOutRecord(job, box);
    if (job.options.kind === 'card') return layOutCard(job, box);
    return layOutSheets(job, box);
  });

/** Every page as it is printed. */
export function pagesOf(l: Layout) {
  if (l.sheet === 'record') return recordPages(l);
  if (l.sheet === 'card') return cardPages(l);
  return sheetsPages(l);
}

export function pageCount(l: Layout): number {
  if (l.sheet === 'record') return 1;
  return l.sheet === 'card' ? l.sides.length : sheetsPageCount(l);
}

/** The words that are painted, in the order of the pages. */
export const inkedOf = (l: Layout): InkedWord[] => (l.sheet === 'record' ? [] : l.inked);
