// A field for a whole number.
import { html } from 'lit-html';

interface NumberField {
  /** Its id, and its hook. */
  id: string;
  least: number;
  most: number;
  now: number;
  /** What stands in for what is no number. */
  usual: number;
  choose: (n: number) => void;
}

/** What is typed is brought into the limits. */
export function numberField({ id, least, most, now, usual, choose }: NumberField) {
  const typed = (e: Event) => {
    const field = e.target as HTMLInputElement;
    const n = Math.min(most, Math.max(least, Math.round(Number(field.value)) || usual));
    field.value = String(n);
    choose(n);
  };
  return html`<input
    id=${id}
    type="number"
    inputmode="numeric"
    min=${least}
    max=${most}
    .value=${String(now)}
    data-t=${id}
    @change=${typed}
  />`;
}
