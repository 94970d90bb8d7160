// What may happen to the connection to the record while the page is open: told to the family in
// plain words, with what can be done.
import { t } from '../i18n.ts';
import { note, noted } from '../notes.ts';
import * as state from '../state.ts';
import * as store from '../store/store.ts';
import { reasonOf } from '../store/unavailable.ts';
import { take } from './keep.ts';

/** Set while the page is loaded again because another tab has a newer version. */
const RELOADED = 'sutur-reloaded';

/** Once the state has what the store gave at the start. */
export function watchConnection() {
  if (wasReloaded()) state.set({ notice: { text: t('closed.superseded'), name: 'superseded' } });
  store.onConnection((event) => {
    if (event === 'superseded') reload();
    else void readAgain(event === 'lost');
  });
}

/**
 * With the version that the other tab has. What is on the screen is kept by now, and is there
 * again.
 */
function reload() {
  note('visit', RELOADED, '1');
  location.reload();
}

function wasReloaded(): boolean {
  const reloaded = noted('visit', RELOADED) !== '';
  note('visit', RELOADED, undefined);
  return reloaded;
}

/** Shows the record as it can be read now, or why it cannot. */
async function readAgain(lost: boolean) {
  try {
    take(await readPatiently());
    state.set({ closed: undefined });
    if (lost) state.set({ notice: { text: t('closed.lost'), hold: true, name: 'lost' } });
  } catch (e) {
    state.set({ closed: reasonOf(e) });
  }
}

/** While a browser clears its data, the database cannot be opened; so it is tried again. */
const TRIES = 4;

/** Time (ms) between two of them. */
const BETWEEN = 1000;

async function readPatiently(): Promise<store.Kept> {
  for (let left = TRIES - 1; ; left--) {
    try {
      return await store.all();
    } catch (e) {
      if (!left) throw e;
      await new Promise((resolve) => setTimeout(resolve, BETWEEN));
    }
  }
}
