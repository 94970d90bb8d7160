// Where the worker is at home, what it was built to keep, and the names by which it keeps it.

import { prefixOf, stateOf } from './names.ts';

/**
 * Name, then length and SHA-256 in base64 of the file, then of what is in it if it is a .gz file.
 */
export type Entry = [string, number, string, number?, string?];
declare const __PRECACHE__: { version: string; list: Entry; lost: string };

export const sw = self as unknown as ServiceWorkerGlobalScope;
const { version, list: LIST, lost: LOST } = __PRECACHE__;
export { LIST, LOST };
export const scope = sw.registration.scope;
export const PREFIX = prefixOf(scope);

/** The caches of this version's files and of what is known about versions. */
export const NAME = PREFIX + version;
export const STATE = stateOf(scope);

export const urlOf = (name: string) => new URL(name, scope).href;

/** The pages of the site that are open, also those that another worker answers. */
export const pages = async () =>
  (await sw.clients.matchAll({ includeUncontrolled: true, type: 'window' })).filter((c) =>
    c.url.startsWith(scope),
  );

/** The file that an address means: its name below the scope, index.html for a folder. */
export function nameOf(url: string): string {
  const name = new URL(url).pathname.slice(new URL(scope).pathname.length);
  return name === '' || name.endsWith('/') ? `${name}index.html` : name;
}

/** Whether an address is that of the one file, which is handed over and not kept here. */
export const isHandedOver = (url: string) => nameOf(url).startsWith('one-file/');

/** Whether a name carries the hash of its file. */
export const hashed = (name: string) => /\.[0-9A-Za-z_-]{8,}\.[a-z0-9.]+$/.test(name);
