// Pages and style sheets of the site. In the one file, pages.one.ts stands in place of this.
import type { Screen } from '../screens/screen.ts';
import type { Route } from '../types.ts';
import { read } from './files.ts';

/** What stands in a page, as HTML. */
export const pageText = async (name: string) => new TextDecoder().decode(await read(name));

/** Pages are documents of their own: the address that one has in the one file leads to it. */
export function pageScreen(r: Route): Promise<Screen> {
  if (r.name === 'read') location.replace(r.page + (r.at && `#${r.at}`));
  return new Promise(() => undefined);
}

/** Puts a style sheet into effect that the page names as data-NAME, unless it is already. */
export function sheet(name: string): Promise<void> {
  const href = document.documentElement.dataset[name];
  if (!href || document.querySelector(`link[href="${href}"]`)) return Promise.resolve();
  return new Promise((ok, no) => {
    const link = document.createElement('link');
    link.rel = 'stylesheet';
    link.href = href;
    link.onload = () => ok();
    link.onerror = () => {
      link.remove();
      no(new Error(href));
    };
    document.head.append(link);
  });
}

/** Whether the page can be had again. */
export const isThere = () =>
  fetch(location.pathname, { cache: 'no-store', redirect: 'manual' }).then(
    (r) => r.ok || r.type === 'opaqueredirect',
    () => false,
  );
