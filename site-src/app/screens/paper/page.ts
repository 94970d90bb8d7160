// A page of paper: what stands on it, and its foot. What is seen on screen is what is printed.
import { html } from 'lit-html';
import { t } from '../../i18n.ts';
import { edgeOf, geometry, leafSize } from '../../paper/geometry.ts';
import type { Leaf } from '../../paper/leaves.ts';
import type { Options } from '../../paper/options.ts';
import type { Catalogue } from '../../types.ts';

/** What a page is: a sheet's name, a page of a booklet, or one that is only measured. */
type Kind = 'practice' | 'answer' | 'card' | 'record' | 'measure' | Leaf['is'];

/** Page n, from 1, of a sheet of so many; fit makes its letters smaller. */
export const page = (
  c: Catalogue,
  kind: Kind,
  n: number,
  of: number,
  inside: unknown,
  fit?: number,
) => html`
  <section
    class="leaf"
    data-sheet=${kind}
    data-page=${n}
    aria-label=${t('print.page', { n })}
    .style=${fitStyle(fit)}
  >
    ${inside}
    <footer class="leaf-foot">
      <span>${t('print.source', { digest: c.textDigest.slice(0, 16) })}</span>
      <span class="page-number">${t('print.page-of', { n, of })}</span>
    </footer>
  </section>
`;

/** A label and a blank to write in, or with what is written there already. */
export const fillIn = (label: string, value = '', size = '') =>
  html`<span class="fill-in ${size}">${label}<span class="blank">${value}</span></span>`;

/** The style of what is made smaller to fit its place; none for what was not measured yet. */
export const fitStyle = (fit: number | undefined) =>
  fit === undefined ? '' : `--fit:${fit.toFixed(2)}`;

/** The style of what pages stand in: their measures. */
export function pageStyle(o: Options): string {
  const g = geometry(o);
  const [w, h] = leafSize(o);
  return `--wide:${w}mm;--high:${h}mm;--rim:${edgeOf(o)}mm;--em:${g.em}px;--pitch:${g.pitch}px`;
}
