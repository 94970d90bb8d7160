// A way to send the result of a session to the teacher.
import { html } from 'lit-html';
import { t } from '../../i18n.ts';
import { sendHash } from '../../share/link.ts';
import type { Entry } from '../../types.ts';

export const sendLink = ({ id }: Pick<Entry, 'id'>) =>
  html`<a class="button plain" href=${sendHash(id)} data-t="send-result">${t('nav.send')}</a>`;
