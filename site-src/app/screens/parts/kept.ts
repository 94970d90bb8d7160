// One line about what is kept for use without a signal: how far it is, and what went wrong.
import { html, nothing } from 'lit-html';
import { keepAgain } from '../../edition/keeping.ts';
import { t } from '../../i18n.ts';
import type { Kept } from '../../offline/offline.ts';

/** The line; ready stands there once everything is kept. */
export const keptLine = (k: Kept, ready: unknown) => html`
  <div class="kept quiet" role="status" data-t="offline">${words(k, ready)}</div>
`;

function words(k: Kept, ready: unknown) {
  const { kind, n = 0, of = 0, why = 'network' } = k;
  if (kind === 'unknown') return nothing;
  if (kind === 'ready') return ready;
  if (kind === 'failed')
    return html`<p>${t(`offline.failed-${why}`, { n, of })}</p>
      <button class="plain" data-t="offline-again" @click=${() => void keepAgain()}>
        ${t('error.again')}
      </button>`;
  return html`<p>${t(`offline.${kind === 'saving' && of ? 'so-far' : kind}`, { n, of })}</p>`;
}
