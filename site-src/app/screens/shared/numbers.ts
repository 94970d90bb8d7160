// The row of numbers at a ring, where there is no keyboard: a press held on a letter opens it, the
// next press closes it.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import { NUMBERS, number, ringAt } from '../../marking/drawing.ts';
import { type Board, draw } from './board.ts';
import { type Ground, ringOf } from './shapes.ts';

/** Pixels of the row's width and height, and between it and the ring. */
const WIDE = 256;
const HIGH = 56;
const APART = 8;

/** wide is the width of the sheet. */
export function numbersRow(b: Board, g: Ground, wide: number) {
  const at = b.numbers;
  const r = at && ringOf(g, at);
  if (!at || !r) return nothing;
  const x = Math.min(Math.max(r.cx - WIDE / 2, 0), Math.max(wide - WIDE, 0));
  const above = r.cy - r.ry - HIGH - APART;
  const y = above + g.origin.y < 0 ? r.cy + r.ry + APART : above;
  const now = ringAt(b.drawing, at)?.n;
  const write = (n: number) => draw((d) => number(d, n, at), { numbers: undefined });
  return html`<div
    class="numbers"
    role="group"
    aria-label=${t('shared.numbers')}
    data-t="numbers"
    .style=${`left:${x}px;top:${y}px`}
  >
    ${NUMBERS.map(
      (n) =>
        html`<button aria-pressed=${n === now} data-t="number-${n}" @click=${() => write(n)}>
          ${n}
        </button>`,
    )}
  </div>`;
}
