// What a newer version, which is kept already and not in use yet, brings for families.
import { prefixOf, stateOf } from '../worker/names.ts';

const FILE = 'news.json';

/** The sentences of the newer version that this one does not have; none where that is not known. */
export async function news(): Promise<string[]> {
  try {
    const { scope } = (await navigator.serviceWorker.getRegistration())!;
    const url = new URL(FILE, scope).href;
    const known = new Set(await sentences(await fetch(url)));
    const coming = await Promise.all(
      (await newer(scope)).map(async (cache) =>
        sentences(await (await caches.open(cache)).match(url)),
      ),
    );
    return [...new Set(coming.flat())].filter((x) => !known.has(x));
  } catch {
    return [];
  }
}

async function sentences(res: Response | undefined): Promise<string[]> {
  const list: unknown = res?.ok ? await res.json() : [];
  return Array.isArray(list) ? list.filter((x) => typeof x === 'string') : [];
}

/** The caches of versions that have not been in use yet. */
async function newer(scope: string): Promise<string[]> {
  const stateName = stateOf(scope);
  const used = await (await caches.open(stateName)).match(scope);
  const { active, older } = (await used!.json()) as { active: string; older: string[] };
  return (await caches.keys()).filter(
    (x) => x.startsWith(prefixOf(scope)) && x !== stateName && x !== active && !older.includes(x),
  );
}
