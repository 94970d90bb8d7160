// The heads of a sheet's pages.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import type { Rule } from '../../types.ts';
import { swatch } from '../parts/pencil.ts';
import { arabic } from '../parts/words.ts';
import { fillIn } from './page.ts';

/** What the heads say. */
export interface Heads {
  title: string;
  rule: Rule | undefined;
  /** The learner's name, empty where it is not written. */
  child: string;
  learnt: Rule[];
  /** How many places the rule has. */
  places: number;
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
    <p class="task-line">${x.rule ? taskOf(x.rule) : t('print.only-read')}</p>
    ${x.learnt.length ? learntStrip(x.learnt) : nothing}
  </header>
`;

const taskOf = (r: Rule) =>
  html`${t('print.find')} <b>${r.name}</b> ${arabic(r.ar)}. ${fillIn(t('print.how-many'))}`;

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
    <p class="task-line">${x.rule ? placesOf(x.rule, x.places) : t('print.only-read')}</p>
    <p class="strip">${t('print.how-shown')}</p>
  </header>
`;

const placesOf = (r: Rule, n: number) =>
  html`<b>${r.name}</b> ${arabic(r.ar)}: ${t('print.places', { n })}`;

/** The small head of every page after the first. */
export function nextHead(x: Heads, kind: 'practice' | 'answer', height?: number) {
  const title = kind === 'answer' ? t('print.answers', { title: x.title }) : x.title;
  const rule = x.rule ? ` · ${x.rule.name}` : '';
  return html`<header class="leaf-head" .style=${heightStyle(height)}>${title}${rule}</header>`;
}
