// Has the site kept for use without a signal. In the one file, keeping.one.ts stands in place of this.
import { arrived } from '../actions/part.ts';
import { t } from '../i18n.ts';
import { reopen } from '../offline/tools.ts';
import * as state from '../state.ts';

/** Says what a newer version brings. */
async function what(take: () => void) {
  const part = await arrived(import('../screens/parts/news.ts'));
  await part?.showNews(take);
}

export async function keepSite() {
  const newer = (take: () => void) => {
    const action = { label: t('update.take'), run: take };
    const more = { label: t('update.news'), run: () => void what(take) };
    state.set({ newer: { text: t('update.ready'), hold: true, name: 'update', action, more } });
  };
  try {
    const { keep } = await import('../offline/offline.ts');
    keep('sw.js', {
      kept: (offline) => state.set({ offline }),
      noRoom: () => state.set({ notice: { text: t('update.full'), name: 'no-room' } }),
      newer,
    });
  } catch {
    state.set({ offline: { kind: 'failed', why: 'network' } });
  }
}

/** Tries again what failed. */
export async function keepAgain() {
  state.set({ offline: { kind: 'saving' } });
  try {
    const { attempt } = await import('../offline/offline.ts');
    await attempt();
  } catch {
    state.set({ offline: { kind: 'failed', why: 'network' } });
    reopen();
  }
}
