// A page without the app: what lesson/page.ts adds to it, and the site is kept, as the first page that
// is opened may be this one.
import { enliven } from './lesson/page.ts';
import { keep } from './offline/offline.ts';
import { whenStyled } from './styles.ts';
import { early } from './theme.ts';

early();
whenStyled(() => enliven(document, location.hash));

// These pages have no place to say how far it is: the app says it.
const quiet = () => undefined;
const idle = window.requestIdleCallback ?? ((f: () => void) => setTimeout(f, 500));
idle(() =>
  keep(new URL('../sw.js', import.meta.url).href, { kept: quiet, newer: quiet, noRoom: quiet }),
);
