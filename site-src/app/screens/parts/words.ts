// Small pieces that many screens write.
import { html } from 'lit-html';
import { t } from '../../i18n.ts';
import type { Learner } from '../../types.ts';

/** Arabic of the text or of a name. */
export const arabic = (text: string, cls = 'ar') =>
  html`<span lang="ar" dir="rtl" class=${cls}>${text}</span>`;

/** What a learner is called. */
export const called = (l: Pick<Learner, 'name'> | undefined) => l?.name || t('child');
