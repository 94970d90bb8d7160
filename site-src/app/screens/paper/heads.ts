// The heads of a sheet's pages.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import type { Rule } from '../../types.ts';
import { swatch } from '../parts/pencil.ts';
import { arabic } from '../parts/words.ts';
import { fillIn } from './page.ts';
import type { SheetPencil } from './pencils.ts';

/** What the heads say. */
export interface Heads {
  title: string;
  /** What there is to find. */
  pencils: SheetPencil[];
  /** The learner's name, empty where it is not written. */
  child: string;
  learnt: Rule[];
}

/** More rules than this are set in small letters. */
const FEW = 14;

/** A head takes height pixels; without, what it needs. */
const heightStyle = (height: number | undefined) =>
  height === undefined ? '' : `block-size:${height}px`;

export const practiceHead = (x: Heads, height?: number) => html`
  <header class="leaf-head first" .style=${heightStyle(height)}>
    <div class="head-line">
      <h2>${x.title}</h2>
      ${fillIn(t('print.name'), x.child)} ${fillIn(t('print.date'))}
    </div>
    <p class="task-line">${taskOf(x)}</p>
    ${x.learnt.length ? learntStrip(x.learnt) : nothing}
  </header>
`;

/** What is to be found, and room for how many. */
function taskOf({ pencils }: Heads) {
  const [one, ...others] = pencils;
  if (!one || (!others.length && !one.marks)) return t('print.only-read');
  return others.length
    ? html`${t('print.find')} ${listed(pencils, blankFor)}. ${t('print.how-many')}`
    : html`${t('print.find')} ${nameOf(one)}. ${fillIn(t('print.how-many'))}`;
}

const nameOf = ({ name, ar }: SheetPencil) =>
  html`<b>${name}</b>${ar ? html` ${arabic(ar)}` : nothing}`;

/** Pencils in a row, each after a stroke of it. */
const listed = (pencils: SheetPencil[], more: (x: SheetPencil) => unknown) =>
  pencils.map((x, i) => [
    i ? ' · ' : nothing,
    html`<span class="formed">${swatch(x.family)}<b>${x.name}</b>${more(x)}</span>`,
  ]);

const blankFor = ({ marks }: SheetPencil) => (marks ? html` ${fillIn('')}` : nothing);

/** Every rule's name after a stroke of its family's pencil. */
const learntStrip = (rules: Rule[]) => html`
  <p class=${rules.length > FEW ? 'strip many' : 'strip'}>
    <b>${t('print.learnt')}</b>
    ${rules.map((r, i) => [
      i ? ' · ' : nothing,
      html`<span class="formed">${swatch(r.family)}${r.name}</span>`,
    ])}
  </p>
`;

export const answerHead = (x: Heads, height?: number) => html`
  <header class="leaf-head first" .style=${heightStyle(height)}>
    <div class="head-line"><h2>${t('print.answers', { title: x.title })}</h2></div>
    <p class="task-line">${placesOf(x)}</p>
    <p class="strip">${t('print.how-shown')}</p>
  </header>
`;

function placesOf({ pencils }: Heads) {
  const [one, ...others] = pencils;
  if (!one || (!others.length && !one.marks)) return t('print.only-read');
  return others.length
    ? listed(pencils, (x) => (x.marks ? `: ${x.places}` : nothing))
    : html`${nameOf(one)}: ${t('print.places', { n: one.places })}`;
}

/** The small head of every page after the first. */
export function nextHead(x: Heads, kind: 'practice' | 'answer', height?: number) {
  const title = kind === 'answer' ? t('print.answers', { title: x.title }) : x.title;
  const names = x.pencils.map((p) => ` · ${p.name}`).join('');
  return html`<header class="leaf-head" .style=${heightStyle(height)}>${title}${names}</header>`;
}
