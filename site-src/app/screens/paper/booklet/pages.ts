// A page of a booklet.
import { html, type TemplateResult } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';
import { t } from '../../../i18n.ts';
import type { Row } from '../../../paper/rows.ts';
import { linesName } from '../../../text/names.ts';
import type { InkedWord } from '../ink.ts';
import { row } from '../line.ts';
import { page } from '../page.ts';
import { cover } from './cover.ts';
import { countsPage } from './counts.ts';
import { days } from './days.ts';
import { keyPage } from './key.ts';
import type { BookletLayout } from './layout.ts';
import { HEAD, type LineSet } from './lines.ts';

/** Page n, from 1. */
export function leafView(l: BookletLayout, n: number): TemplateResult {
  const { is } = l.leaves[n - 1]!;
  return page(l.c, is, n, l.leaves.length, inside(l, n), l.fits[is]);
}

function inside(l: BookletLayout, n: number): unknown {
  const leaf = l.leaves[n - 1]!;
  switch (leaf.is) {
    case 'cover':
      return cover(l);
    case 'pencils':
      return keyPage(l, leaf.n);
    case 'practice':
      return lines(l, l.practice, leaf.n, false);
    case 'counts':
      return countsPage(l, leaf.n);
    case 'answer':
      return lines(l, l.answer!, leaf.n, true);
    case 'days':
      return days(l);
    case 'blank':
      return '';
  }
}

/** The rows of a page of lines. */
export const rowsOf = ({ rows, starts }: LineSet, n: number): Row[] =>
  rows.slice(starts[n], starts[n + 1]);

function lines(l: BookletLayout, set: LineSet, n: number, answers: boolean) {
  const list = rowsOf(set, n);
  const words = list.flatMap((r) => ('head' in r ? [] : r.words));
  const at = (v: number) => ({ s: l.passage.verses[v]!.s, a: l.passage.verses[v]!.a });
  const name = linesName(l.c.surahs, at(words[0]!.v), at(words.at(-1)!.v));
  return html`
    <header class="leaf-head" .style=${`block-size:${HEAD}mm`}>
      ${answers ? t('print.answers', { title: name }) : name}
    </header>
    <div
      class=${answers ? 'rows small' : 'rows'}
      .style=${`--em:${set.g.em}px;--pitch:${set.g.pitch}px`}
    >
      ${list.map((r) => row(l.c, l.passage, r, answers))}
    </div>
  `;
}

/** The words of page n that are painted, in their order; none where it is no page of answers. */
export function inkedOn(l: BookletLayout, n: number): InkedWord[] {
  const leaf = l.leaves[n - 1]!;
  if (leaf.is !== 'answer') return [];
  return rowsOf(l.answer!, leaf.n).flatMap((r) =>
    'head' in r ? [] : r.words.map(({ v, w }) => l.inked[v]![w]!),
  );
}

/** Side i of the paper; a side never changes. */
export const sideView = (l: BookletLayout, i: number) =>
  guard([l], () => {
    const [left, right] = l.sides[i]!.map((n) => leafView(l, n));
    return right === undefined ? left : html`<div class="side" dir="ltr">${left}${right}</div>`;
  });
