// Starts the app: reads what is kept and the catalogue, then shows the screen that the address
// names.
import { watchConnection } from './actions/connection.ts';
import { follow, recheck, take } from './actions/keep.ts';
import { begun, draw, drawFailed } from './draw.ts';
import { keepSite } from './edition/keeping.ts';
import { t } from './i18n.ts';
import type { Install } from './offline/device.ts';
import { reopen, started } from './offline/tools.ts';
import { makeRoom } from './screens/frame.ts';
import { wayOut } from './screens/parts/wayout.ts';
import { reportDamaged } from './actions/damaged.ts';
import { parseHash } from './share/link.ts';
import * as state from './state.ts';
import * as store from './store/store.ts';
import { onOtherTab } from './store/tabs.ts';
import { reasonOf } from './store/unavailable.ts';
import { whenStyled } from './styles.ts';
import { loadCatalogue, TextError } from './text/data.ts';
import { early } from './theme.ts';

/** Time (ms) from the first screen on in which nothing is done that can wait. */
const QUIET = 3000;

async function start() {
  const { catalogue, sha } = document.documentElement.dataset;
  const reading = store.all().catch(reasonOf);
  const styles = new Promise<void>(whenStyled);
  const c = await loadCatalogue(catalogue!, sha!);
  const answer = await reading;
  await styles;
  begun();
  state.onChange(draw);
  state.set({ catalogue: c, route: parseHash(c, location.hash) });
  if (typeof answer === 'string') state.set({ closed: answer });
  else take(answer);
  addEventListener('hashchange', () => state.set({ route: parseHash(c, location.hash) }));
  onOtherTab((tables) => void follow(tables).catch(() => undefined));
  watchConnection();
  watchNetwork();
  started();
  reportDamaged();
}

function watchNetwork() {
  const look = () => state.set({ online: navigator.onLine });
  addEventListener('online', look);
  addEventListener('offline', look);
  look();
}

function failed(e: unknown) {
  const code = e instanceof TextError ? e.code : 'damaged';
  drawFailed(t(`error.${code}`), reopen, wayOut());
}

/** Has the site kept for use without a signal, and looks once more whether all sessions were read. */
function settle() {
  const said = document.querySelector('.said');
  if (said) makeRoom(said);
  const idle = window.requestIdleCallback ?? ((f: () => void) => setTimeout(f, 500));
  setTimeout(
    () => idle(() => void recheck().then((more) => more && reportDamaged(), ignore)),
    QUIET,
  );
  idle(() => void keepSite());
}

const ignore = () => undefined;

// Shown where it is said what it is for (screens/parts/safe.ts), not whenever the browser likes.
addEventListener('beforeinstallprompt', (offer) => {
  offer.preventDefault();
  state.set({ install: offer as Install });
});

early();
void start().catch(failed).then(settle);
