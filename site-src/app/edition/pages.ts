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

const asked = new Map<string, Promise<void>>();

/** Puts a style sheet into effect that the page names as data-NAME; all who ask wait for it. */
export function sheet(name: string): Promise<void> {
  const there = asked.get(name);
  if (there) return there;
  const coming = linked(document.documentElement.dataset[name]!);
  asked.set(name, coming);
  coming.catch(() => asked.delete(name));
  return coming;
}

const linked = (href: string) =>
  new Promise<void>((ok, no) => {
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

/** Whether the page can be had again. */
export const isThere = () =>
  fetch(location.pathname, { cache: 'no-store', redirect: 'manual' }).then(
    (r) => r.ok || r.type === 'opaqueredirect',
    () => false,
  );
