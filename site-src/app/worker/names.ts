// The names of caches, for the worker and for the page.

/** What the names of all caches of the site below an address begin with. */
export const prefixOf = (scope: string) => `sutur:${scope}:`;

/** The cache that says which versions are in use. */
export const stateOf = (scope: string) => `${prefixOf(scope)}state`;
