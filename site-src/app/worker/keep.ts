// Keeps every file of the site.
import { type Entry, NAME, urlOf } from './scope.ts';
import { had, list, others, put } from './kept.ts';
import { quiet } from './quiet.ts';
import { Bad, fresh } from './right.ts';

/**
 * Keeps a file, from this cache, from an older one, else from the network, and returns its bytes.
 */
async function save(e: Entry): Promise<ArrayBuffer> {
  let b = await had(e, NAME);
  if (b) return b;
  for (const k of await others()) b ??= await had(e, k);
  b ??= await fresh(e, false);
  await put(e[0], b);
  return b;
}

/**
 * Does work for every file, four at a time; the first that cannot be had ends it, once the others on
 * their way are done: nothing is said of any of them after that.
 */
async function each(files: Entry[], work: (e: Entry) => Promise<unknown>) {
  const queue = [...files];
  const failures: unknown[] = [];
  const one = async () => {
    for (let e = queue.shift(); e && !failures.length; e = queue.shift())
      await work(e).catch((x: unknown) => failures.push(x));
  };
  await Promise.all([one(), one(), one(), one()]);
  if (failures.length) throw failures[0];
}

/** Keeps every file. What was kept before the first that cannot be had counts at the next try. */
export async function fill(progress: (n: number, of: number) => void) {
  const files = [...(await list()).values()];
  const bytes = new Map<Entry, ArrayBuffer>();
  await each(files, async (e) => {
    await quiet();
    bytes.set(e, await save(e));
    if (bytes.size % 10 === 0) progress(bytes.size, files.length);
  });
  if (!(await missing()).length) return;
  // WebKit may lose all that a worker has kept that did not get to its end. The cache then lists
  // nothing, and what is put into it is gone again; in one made afresh it stays. The bytes are at
  // hand: no network is needed between the two.
  await caches.delete(NAME);
  await each(files, (e) => put(e[0], bytes.get(e)!));
  if ((await missing()).length) throw new Bad('', 'network');
}

/** The files that are not in the cache: a browser may clear it and leave the worker. */
export async function missing(): Promise<Entry[]> {
  const there = new Set((await (await caches.open(NAME)).keys()).map((r) => r.url));
  return [...(await list()).values()].filter((e) => !there.has(urlOf(e[0])));
}
