// What is drawn, as SVG over the sheet, measured anew whenever the lines are laid anew.
import { svg, type TemplateResult } from 'lit-html';
import type { Drawn, Ring } from '../../marking/drawing.ts';
import { pathOf, pieces, type Point, runs, type Spot } from '../../marking/snap.ts';
import { Sheet } from '../../painting/sheet.ts';
import { standsOver } from '../../text/letters.ts';
import type { Place } from '../../types.ts';

/** What shapes are measured by: the words on screen, and where on screen the sheet begins. */
export interface Ground {
  sheet: Sheet;
  origin: Point;
  spots: Spot[];
  spot: (at: { v: number; w: number }) => Spot | undefined;
}

/** How far from its letter a ring is, and how wide and high it is at least to each side; in em. */
const CLEAR = 0.13;
const WIDE = 0.32;
const HIGH = 0.4;

/** How far below the baseline a ring reaches at least: WebKit moves some words down by their signs. */
const DOWN = 0.2;

/** Where below the baseline a line under words is, in em: clear of the shapes of marks. */
const BELOW = 0.8;

/** Where a ring around a letter stands on the sheet; size is that of the letters. */
export function ringOf({ sheet, origin }: Ground, at: Place) {
  const s = sheet.word(at.v, at.w);
  if (!s) return undefined;
  const size = Sheet.em(s);
  const { left, right } = Sheet.across(s, at.l);
  const reach = Sheet.reach(s, at.l);
  const { up } = reach;
  const down = standsOver(s.word, at.l) ? reach.down : Math.max(reach.down, DOWN);
  return {
    size,
    cx: (left + right) / 2 - origin.x,
    cy: Sheet.base(s) - ((up - down) / 2) * size - origin.y,
    rx: Math.max((right - left) / 2 + CLEAR * size, WIDE * size),
    ry: Math.max(((up + down) / 2 + CLEAR) * size, HIGH * size),
  };
}

/** The runs of points of a line or a stroke: what a press on it is near to. */
export function runsOf(g: Ground, x: Exclude<Drawn, Ring>): Point[][] {
  if (x.kind === 'stroke') return runs(x.dots, g.spot);
  return pieces(x.words, g.spot).map(({ left, right, base, em }) => {
    const y = base + BELOW * em;
    return [
      { x: right, y },
      { x: left, y },
    ];
  });
}

export const shapes = (g: Ground, drawn: Drawn[]) => drawn.map((x) => shape(g, x));

function shape(g: Ground, x: Drawn): TemplateResult | undefined {
  if (x.kind === 'ring') return ring(g, x);
  return svg`<path class=${x.kind} d=${runsOf(g, x).map(pathOf).join('')}></path>`;
}

function ring(g: Ground, { at, n }: Ring) {
  const r = ringOf(g, at);
  if (!r) return undefined;
  const { cx, cy, rx, ry, size } = r;
  return svg`<ellipse class="ring" data-t="ring-${at.v}-${at.w}-${at.l}" cx=${cx} cy=${cy} rx=${rx} ry=${ry}></ellipse>
    <text x=${cx} y=${cy - ry - 0.1 * size}>${n ?? ''}</text>`;
}
