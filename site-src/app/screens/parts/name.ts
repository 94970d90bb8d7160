// Asks for the name of a learner, which may stay empty and never leaves the device.
import { html } from 'lit-html';
import { LONGEST } from '../../actions/learner.ts';
import { t } from '../../i18n.ts';

/** id is that of the field, and its hook. */
export const askName = (id: string) => html`
  <label for=${id}>${t('first.name')}</label>
  <input id=${id} maxlength=${LONGEST} autocomplete="off" placeholder=${t('child')} data-t=${id} />
  <p class="quiet">${t('first.private')}</p>
`;
