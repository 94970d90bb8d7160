// What the sign of Today says when it is opened: what is kept on this device, and which version.
import '../../later.ts';
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import { version } from '../../offline/version.ts';
import * as state from '../../state.ts';

/** Has it said. */
export async function tell() {
  const here = await version();
  const view = () => html`
    <p>${t('kept.here')}</p>
    ${here ? html`<p data-t="version">${t('kept.version', { version: here })}</p>` : nothing}
  `;
  state.set({ keptHere: { view } });
}
