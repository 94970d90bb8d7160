// The pages: scaled on screen to the room there is, in full size for print. The browser is told the
// paper's size.
import { html, nothing } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';
import { keyed } from 'lit-html/directives/keyed.js';
import { highlight } from '../../painting/highlights.ts';
import { geometry, pageSize } from '../../paper/geometry.ts';
import { paint } from './ink.ts';
import { inkedOf, type Layout, pagesOf } from './layout.ts';
import { pageStyle } from './page.ts';

/** Of more pages than this, those out of sight are not drawn on screen. */
const FEW = 12;

/** The pages of a layout never change: those of another take their place whole. */
export const preview = (l: Layout | undefined) =>
  html`<div class="print-stage">${keyed(l, l ? pages(l) : nothing)}</div>`;

function pages(l: Layout) {
  return guard([l], () => {
    const list = pagesOf(l);
    return html`<div
      class=${list.length > FEW ? 'leaves many' : 'leaves'}
      data-turn=${l.options.turn}
      .style=${pageStyle(l.options)}
    >
      ${list}
    </div>`;
  });
}

/** The size of the paper, for the browser's print. */
const paper = new CSSStyleSheet();

/** The pages that are painted. */
let painted: Layout | undefined;
let stage: HTMLElement | undefined;

const watch = new ResizeObserver(scale);

export function enterPreview() {
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, paper];
}

/** Paints pages that have just been drawn. */
export function paintPreview(l: Layout | undefined) {
  if (!stage?.isConnected) {
    watch.disconnect();
    stage = document.querySelector<HTMLElement>('.print-stage')!;
    watch.observe(stage);
  }
  if (l === painted) return;
  painted = l;
  highlight('paper', l ? paint(stage, inkedOf(l)) : new Map());
  if (!l) return;
  const [w, h] = pageSize(l.options.paper, l.options.turn);
  paper.replaceSync(`@page{size:${w}mm ${h}mm;margin:0}`);
  scale();
}

function scale() {
  if (!stage || !painted) return;
  const zoom = Math.min(1, stage.clientWidth / geometry(painted.options).width);
  stage.style.setProperty('--zoom', String(Math.floor(zoom * 1000) / 1000));
}

/** Leaves neither colours nor the paper's size behind. */
export function leavePreview() {
  watch.disconnect();
  stage = undefined;
  painted = undefined;
  highlight('paper', new Map());
  document.adoptedStyleSheets = document.adoptedStyleSheets.filter((x) => x !== paper);
}
