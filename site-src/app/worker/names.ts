// The names of caches and of what is in them, for the worker and for the page.

/** What the names of all caches of the site below an address begin with. */
export const prefixOf = (scope: string) => `sutur:${scope}:`;

/** The cache that says which versions are in use, and holds what was shared with the app. */
export const stateOf = (scope: string) => `${prefixOf(scope)}state`;

/**
 * Where other apps send what is shared with this one (the manifest says so), under which name the
 * worker keeps it for the page, and the screen that takes it away.
 */
export const BROUGHT = 'brought';

/** What the worker asks a page, which answers, on the port that comes with it, when it is idle. */
export const QUIET = 'quiet?';
