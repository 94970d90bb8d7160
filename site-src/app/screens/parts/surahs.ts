// A field that names a surah.
import { html } from 'lit-html';
import type { Catalogue } from '../../types.ts';

/** A list of all surahs by number and both names; now is the number of the one chosen. */
export const surahSelect = (
  c: Catalogue,
  id: string,
  now: number,
  choose: (surah: number) => void,
) => html`
  <select
    id=${id}
    data-t=${id}
    @change=${(e: Event) => choose(Number((e.target as HTMLSelectElement).value))}
  >
    ${c.surahs.map(
      (s) =>
        html`<option value=${s.n} .selected=${s.n === now}>
          ${`${s.n}. ${s.la} · \u2067${s.ar}\u2069`}
        </option>`,
    )}
  </select>
`;
