// How large the letters are, in points.
import { html } from 'lit-html';
import { t } from '../../i18n.ts';

export function sizeField(
  size: number,
  least: number,
  most: number,
  step: number,
  choose: (size: number) => void,
) {
  const points = t('print.points', { n: size });
  return html`<div>
    <label for="print-size">${t('print.size')} <span class="quiet">${points}</span></label>
    <input
      id="print-size"
      type="range"
      min=${least}
      max=${most}
      step=${step}
      .value=${String(size)}
      data-t="print-size"
      aria-valuetext=${points}
      @input=${(e: Event) => choose(Number((e.target as HTMLInputElement).value))}
    />
  </div>`;
}
