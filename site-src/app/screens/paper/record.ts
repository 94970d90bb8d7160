// The record sheet: four weeks, five short sessions each to tick, and a line for what was read.
import { html, render } from 'lit-html';
import { t } from '../../i18n.ts';
import type { Options } from '../../paper/options.ts';
import { type Catalogue, OUTCOMES } from '../../types.ts';
import { boxes, fit } from './fit.ts';
import type { Job } from './job.ts';
import { fillIn, page } from './page.ts';

const WEEKS = 4;
const SESSIONS = 5;

export interface RecordLayout {
  sheet: 'record';
  c: Catalogue;
  options: Options;
  /** The learner's name, empty where it is not written. */
  child: string;
  fit?: number;
}

/** Fits the words of the sheet in box, which must be on the page, in full size. */
export function layOutRecord({ c, options, learner }: Job, box: HTMLElement): RecordLayout {
  const child = options.name ? (learner?.name ?? '') : '';
  const layout: RecordLayout = { sheet: 'record', c, options, child };
  render(recordPages(layout), box);
  const places = '.weeks, .week-block, .weeks ol, .weeks li, .weeks h3, .fill-in';
  return { ...layout, fit: fit(boxes(box, '.leaf'), boxes(box, places)) };
}

export const recordPages = ({ c, child, fit }: RecordLayout) => [
  page(
    c,
    'record',
    1,
    1,
    html`
      <header class="leaf-head">
        <div class="head-line">
          <h2>${t('print.kind.record')}</h2>
          ${fillIn(t('print.name'), child)}
        </div>
      </header>
      <div class="weeks">${Array.from({ length: WEEKS }, (_, i) => week(i + 1))}</div>
    `,
    fit,
  ),
];

const week = (n: number) => html`
  <section class="week-block">
    <h3>${t('print.week', { n })}${fillIn(t('print.from'), '', 'short')}</h3>
    <ol>
      ${Array.from({ length: SESSIONS }, session)}
    </ol>
  </section>
`;

const session = () => html`
  <li>
    ${tick()} ${fillIn(t('print.day'), '', 'short')} ${fillIn(t('print.read'), '', 'long')}
    ${fillIn(t('print.rule'))}
    <span class="went"
      >${OUTCOMES.map((x) => html`<span>${tick()}${t(`print.went.${x}`)}</span>`)}</span
    >
  </li>
`;

const tick = () => html`<span class="tick"></span>`;
