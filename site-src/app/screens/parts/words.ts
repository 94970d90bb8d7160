// Small pieces that many screens write.
import { html } from 'lit-html';

export { called } from '../../text/names.ts';

/** Arabic of the text or of a name. */
export const arabic = (text: string, cls = 'ar') =>
  html`<span lang="ar" dir="rtl" class=${cls}>${text}</span>`;
