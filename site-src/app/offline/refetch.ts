// What arrived wrong may lie in a cache on the way.

/**
 * Fetches again what this page is made of, so that opening it anew does not meet the same damaged
 * copies.
 */
export async function refetch(): Promise<void> {
  const own = [
    ...performance.getEntriesByType('resource').map((e) => e.name),
    ...[...document.scripts].map((s) => s.src),
    location.href,
  ];
  const urls = new Set(
    own.map((u) => u.split('#')[0]!).filter((u) => u.startsWith(`${location.origin}/`)),
  );
  await Promise.all([...urls].map((u) => fetch(u, { cache: 'reload' }).catch(() => undefined)));
}

/** Whether the host answers for this page. */
export const answers = async () => (await fetch(location.href, { cache: 'no-store' })).ok;
