// Lines that another tab has in hand.
import { html } from 'lit-html';
import { t } from '../../i18n.ts';
import { claim } from '../../practice/claim.ts';
import { adopt } from '../../practice/keeping.ts';

export const elsewhere = () => html`
  <div class="elsewhere" role="status" data-t="elsewhere">
    <p>${t('lines.elsewhere')}</p>
    <button class="main" data-t="take-over" @click=${takeOver}>${t('lines.take-over')}</button>
  </div>
`;

/** Goes on here, with what was marked there. */
async function takeOver() {
  await adopt();
  claim(true);
}
