// The pencils of a sheet, and for several of them the places of each verse: a box each to write in
// on the practice sheet, and filled in on the answer sheet.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import { pencilIds, pencils, STOPS } from '../../marking/pencils.ts';
import type { Marks } from '../../paper/marks.ts';
import type { Verse } from '../../types.ts';
import { swatch } from '../parts/pencil.ts';
import type { Job } from './job.ts';

export interface SheetPencil {
  name: string;
  /** The Arabic name of a rule, empty for others. */
  ar: string;
  family: string;
  /** The rules it marks, by index. */
  rules: number[];
  /** Whether it marks letters; that of stops does not. */
  marks: boolean;
  /** How many places it has in each verse. */
  byVerse: number[];
  places: number;
}

/** The rules that the pencils mark, by index. */
export const rulesOf = (job: Job): number[] => [...new Set(pencilsIn(job).flatMap((x) => x.rules))];

/** A family's pencil stands for what the learner was taught, or for all where there is none. */
const pencilsIn = ({ c, options, learner, learnt }: Job) =>
  pencils(c, pencilIds(options), learner ? new Set(learnt.map((r) => r.id)) : 'all');

export const sheetPencils = (job: Job, { hits }: Marks): SheetPencil[] =>
  pencilsIn(job).map(({ id, name, family, rules }) => {
    const mine = hits.map((v) => v.flat().filter((h) => rules.includes(h.e.rule)).length);
    return {
      name: name || t('case.stops'),
      ar: job.c.rules.find((r) => r.id === id)?.ar ?? '',
      family,
      rules,
      marks: id !== STOPS,
      byVerse: mine,
      places: mine.reduce((n, k) => n + k, 0),
    };
  });

/** More verses than these have no boxes: they would not fit beside the names. */
const MOST_VERSES = 12;

/** Whether there are boxes: one pencil has its room in the head. */
export const hasBoxes = (list: SheetPencil[]) =>
  list.length > 1 && list.some((x) => x.marks && x.byVerse.length <= MOST_VERSES);

/** A row for each pencil, a column for each verse. */
export const boxes = (verses: Verse[], list: SheetPencil[], answers: boolean) =>
  hasBoxes(list)
    ? html`<table class="boxes">
        <tr>
          <th scope="col">${t('field.verse')}</th>
          ${verses.map((v) => html`<th scope="col">${v.a}</th>`)}
        </tr>
        ${list
          .filter((x) => x.marks)
          .map(
            (x) =>
              html`<tr>
                <th scope="row">${swatch(x.family)}${x.name}</th>
                ${x.byVerse.map((n) => html`<td>${answers ? n : nothing}</td>`)}
              </tr>`,
          )}
      </table>`
    : nothing;

/** What stands below the lines of a practice sheet. */
export const boxesToFill = (verses: Verse[], list: SheetPencil[]) => html`
  <section class="totals">
    <h3>${t('print.how-many')}</h3>
    ${boxes(verses, list, false)}
  </section>
`;
