// Draws the page: at every change of the state once, by one template. lit-html changes only what
// differs, so that a press, the focus, an open list and the place on the page stay what they are.
import { html, render } from 'lit-html';
import { keepFocus } from './focus.ts';
import { t } from './i18n.ts';
import { afterFrame } from './idle.ts';
import { apply } from './looks.ts';
import { frame, hush } from './screens/frame.ts';
import type { Screen } from './screens/screen.ts';
import { screenFor } from './screens/screens.ts';
import { linesKey } from './share/link.ts';
import * as state from './state.ts';
import type { Route } from './types.ts';

const app = document.getElementById('app')!;

let screen: Screen | undefined;
let address = '';
let turns = 0;

/**
 * Told by the route: the address changes a moment before the route does. The same lines with other
 * pencils are the same screen.
 */
const addressOf = (r: Route) => (r.name === 'lines' ? linesKey(r.lines) : JSON.stringify(r));

export function draw() {
  const s = state.get();
  apply(s.settings);
  const now = screenFor(s);
  const to = addressOf(s.route);
  const other = now !== screen || to !== address;
  if (other) turn(now, to, s.route);
  hush(s);
  const put = () => {
    render(frame(s, turns, now.view(state.get())), app);
    now.drawn?.(state.get());
    app.querySelector<HTMLDialogElement>('dialog.asks:not([open])')?.showModal();
  };
  if (other) put();
  else keepFocus(put);
}

/** Leaves a screen for another, or for the same one at another address. */
function turn(to: Screen, at: string, r: Route) {
  const first = !screen;
  const moved = at !== address;
  const inside = app.querySelector('.screen')?.contains(document.activeElement);
  screen?.leave?.();
  screen = to;
  address = at;
  turns++;
  app.dataset.screen = r.name;
  to.enter?.(r);
  document.title = t('page.title', { screen: to.title(state.get()) });
  // With the frame that shows it, and after the next: before, each would lay the half-made page out
  // once more, or keep the screen waiting for the focus.
  requestAnimationFrame(() => {
    if (moved) scrollTo(0, 0);
  });
  if (!first && (moved || inside)) afterFrame(() => setTimeout(begin));
}

/** The keyboard begins with the heading of a new screen, unless it is in use there already. */
function begin() {
  const hold = app.querySelector('.screen');
  if (!hold?.contains(document.activeElement))
    hold?.querySelector('h1')?.focus({ preventScroll: true });
}

/** Stands in place of the app when it cannot start. */
export function drawFailed(words: string, again: () => void, wayOut: Element | undefined) {
  app.replaceChildren();
  render(
    html`<main class="plain" role="alert">
      <h1>${t('error.title')}</h1>
      <p>${words}</p>
      <button class="main" @click=${again}>${t('error.again')}</button>
      ${wayOut}
    </main>`,
    app,
  );
}

/** Takes the place of what the page said while it was loading. */
export function begun() {
  app.replaceChildren();
  app.removeAttribute('aria-busy');
}
