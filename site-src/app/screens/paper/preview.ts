// The pages: scaled on screen to the room there is, in full size for print. The browser is told the
// paper's size.
import { html, nothing } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';
import { keyed } from 'lit-html/directives/keyed.js';
import { highlight, type Ranges } from '../../painting/highlights.ts';
import { MM, paperSize, turnOf } from '../../paper/geometry.ts';
import type { BookletLayout } from './booklet/layout.ts';
import { inkedOn } from './booklet/pages.ts';
import { paint } from './ink.ts';
import { inkedOf, type Layout, pageCount, sidesOf } from './layout.ts';
import { pageStyle } from './page.ts';

/** Of more pages than this, those out of sight are not drawn on screen. */
const FEW = 12;

/**
 * The pages of a layout never change: those of another take their place whole. Of a booklet the
 * first so many sides are drawn.
 */
export const preview = (l: Layout | undefined, drawn: number) =>
  html`<div class="print-stage">${keyed(l, l ? pages(l, drawn) : nothing)}</div>`;

const pages = (l: Layout, drawn: number) =>
  guard(
    [l, drawn],
    () =>
      html`<div
        class=${pageCount(l) > FEW ? 'leaves many' : 'leaves'}
        data-turn=${turnOf(l.options)}
        .style=${pageStyle(l.options)}
      >
        ${sidesOf(l, drawn)}
      </div>`,
  );

/** The size of the paper, for the browser's print. */
const paper = new CSSStyleSheet();

/** The pages that are painted, how many sides of them, and the ranges of their colours. */
let painted: Layout | undefined;
let sides = 0;
let colours: Ranges = new Map();
let stage: HTMLElement | undefined;

const watch = new ResizeObserver(scale);

export function enterPreview() {
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, paper];
}

/** Paints pages that have just been drawn. */
export function paintPreview(l: Layout | undefined, drawn: number) {
  if (!stage?.isConnected) {
    watch.disconnect();
    stage = document.querySelector<HTMLElement>('.print-stage')!;
    watch.observe(stage);
  }
  if (l !== painted) begin(stage, l);
  if (l?.sheet === 'booklet') paintBooklet(stage, l, drawn);
}

function begin(root: HTMLElement, l: Layout | undefined) {
  painted = l;
  sides = 0;
  colours = l ? paint(root, inkedOf(l)) : new Map();
  highlight('paper', colours);
  if (!l) return;
  const [w, h] = paperSize(l.options);
  paper.replaceSync(`@page{size:${w}mm ${h}mm;margin:0}`);
  scale();
}

/** Paints the sides that were drawn since the last time; colours come with the last. */
function paintBooklet(root: HTMLElement, l: BookletLayout, drawn: number) {
  const now = l.sides.slice(sides, drawn).flat();
  if (!now.length) return;
  sides = Math.min(drawn, l.sides.length);
  for (const n of now) {
    const words = inkedOn(l, n);
    if (words.length) paint(root.querySelector(`[data-page="${n}"]`)!, words, colours);
  }
  if (sides === l.sides.length) highlight('paper', colours);
}

function scale() {
  if (!stage || !painted) return;
  const zoom = Math.min(1, stage.clientWidth / (paperSize(painted.options)[0] * MM));
  stage.style.setProperty('--zoom', String(Math.floor(zoom * 1000) / 1000));
}

/** Leaves neither colours nor the paper's size behind. */
export function leavePreview() {
  watch.disconnect();
  stage = undefined;
  painted = undefined;
  colours = new Map();
  highlight('paper', new Map());
  document.adoptedStyleSheets = document.adoptedStyleSheets.filter((x) => x !== paper);
}
