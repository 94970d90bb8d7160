// Small notes outside the database: on the device, or for the time that the tab lives. A browser may
// block both; then nothing is noted, and what is asked for is not there.

/** Asked for at each use: where it is blocked, that alone fails. */
const STORES = { device: () => localStorage, visit: () => sessionStorage };
type Where = keyof typeof STORES;

/** What is noted under a key, '' for nothing. */
export function noted(where: Where, key: string): string {
  try {
    return STORES[where]().getItem(key) ?? '';
  } catch {
    return '';
  }
}

/** Notes it, or nothing any more. */
export function note(where: Where, key: string, text: string | undefined) {
  try {
    if (text === undefined) STORES[where]().removeItem(key);
    else STORES[where]().setItem(key, text);
  } catch {
    // it is blocked, or full
  }
}

/** The ends of all keys that begin so. */
export function notedBelow(where: Where, begin: string): string[] {
  try {
    return Object.keys(STORES[where]()).flatMap((x) =>
      x.startsWith(begin) ? x.slice(begin.length) : [],
    );
  } catch {
    return [];
  }
}
