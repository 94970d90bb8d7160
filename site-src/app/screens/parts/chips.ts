// One of a few, each a button.
import { html } from 'lit-html';

/** name begins the hook of each button; words is what is written on it. */
export const chips = <T extends string | number>(
  legend: string,
  name: string,
  values: readonly T[],
  now: T,
  words: (value: T) => string,
  choose: (value: T) => void,
) => html`
  <fieldset class="choice">
    <legend>${legend}</legend>
    <div class="row">
      ${values.map(
        (x) =>
          html`<button
            type="button"
            class="chip"
            data-t="${name}-${x}"
            aria-pressed=${x === now}
            @click=${() => choose(x)}
          >
            ${words(x)}
          </button>`,
      )}
    </div>
  </fieldset>
`;
