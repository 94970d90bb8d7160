// One line about what is kept for use without a signal: how far it is, when it is safe to go, what
// went wrong.
import { html, nothing } from 'lit-html';
import { keepAgain } from '../../edition/keeping.ts';
import { t } from '../../i18n.ts';
import type { Kept } from '../../offline/offline.ts';

/** The line; always says also that all is kept where nothing had to be fetched in this visit. */
export const keptLine = (k: Kept, always: boolean) => html`
  <div class="kept quiet" role="status" data-t="offline">${words(k, always)}</div>
`;

/** Nothing has to be fetched. */
const AT_REST = ['ready', 'one-file'];

function words(k: Kept, always: boolean) {
  const { kind, n = 0, of = 0, why = 'network' } = k;
  if (kind === 'unknown' || (AT_REST.includes(kind) && !k.fetched && !always)) return nothing;
  if (kind === 'failed')
    return html`<p>${t(`offline.failed-${why}`, { n, of })}</p>
      <button class="plain" data-t="offline-again" @click=${() => void keepAgain()}>
        ${t('error.again')}
      </button>`;
  return html`<p>${t(`offline.${kind === 'saving' && of ? 'so-far' : kind}`, { n, of })}</p>`;
}
