// A choice that is made or not.
import { html } from 'lit-html';

/** id is its hook; words may be a template. */
export const tick = (
  id: string,
  words: unknown,
  on: boolean,
  choose: (on: boolean) => void,
) => html`
  <label class="tick"
    ><input
      type="checkbox"
      .checked=${on}
      data-t=${id}
      @change=${(e: Event) => choose((e.target as HTMLInputElement).checked)}
    /><span>${words}</span></label
  >
`;
