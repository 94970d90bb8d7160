// One line about what is kept for use without a signal: how far it is, when it is safe to go, what
// went wrong.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import type { Kept } from '../../offline/offline.ts';
import { reopen } from '../../offline/tools.ts';
import * as state from '../../state.ts';

/** The line; always says also that all is kept where nothing had to be fetched in this visit. */
export const keptLine = (k: Kept, always: boolean) => html`
  <div class="kept quiet" role="status" data-t="offline">${words(k, always)}</div>
`;

function words(k: Kept, always: boolean) {
  const { kind, n = 0, of = 0, why = 'network' } = k;
  if (kind === 'unknown' || (kind === 'ready' && !k.fetched && !always)) return nothing;
  if (kind === 'failed')
    return html`<p>${t(`offline.failed-${why}`, { n, of })}</p>
      <button class="plain" data-t="offline-again" @click=${again}>${t('error.again')}</button>`;
  return html`<p>${t(`offline.${kind === 'saving' && of ? 'so-far' : kind}`, { n, of })}</p>`;
}

async function again() {
  state.set({ offline: { kind: 'saving' } });
  try {
    const { attempt } = await import('../../offline/offline.ts');
    await attempt();
  } catch {
    state.set({ offline: { kind: 'failed', why: 'network' } });
    reopen();
  }
}
