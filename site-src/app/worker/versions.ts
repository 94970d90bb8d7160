// Which versions stay. A page keeps the version it was opened with, so the files of the version
// before stay until every page that was open when this one took over is gone.
import { others } from './kept.ts';
import { NAME, pages, scope, STATE, sw } from './scope.ts';

/**
 * In a cache of its own: the version in use, those it followed, and the pages that were open when
 * it began.
 */
interface State {
  active: string;
  older: string[];
  pages: string[];
}

async function state(): Promise<State | undefined> {
  if (!(await caches.has(STATE))) return undefined;
  return (await caches.open(STATE))
    .match(scope)
    .then((r) => r?.json() as Promise<State> | undefined)
    .catch(() => undefined);
}

const pageIds = async () => (await pages()).map((c) => c.id);

/** Notes that this version is in use from now on. */
export async function begin() {
  const s: State = { active: NAME, older: await others(), pages: await pageIds() };
  await (await caches.open(STATE)).put(scope, new Response(JSON.stringify(s)));
  await settle();
}

export const isActive = async () => (await state())?.active === NAME;

/** Whether the version in use was kept by a worker that checked nothing. */
export const unverified = async () => !!sw.registration.active && !(await state());

/** Removes the older versions when no page needs them any more. */
export async function settle() {
  if (sw.registration.installing ?? sw.registration.waiting) return; // it may be one of them
  const s = await state();
  if (!s?.older.length) return;
  const open = new Set(await pageIds());
  if (s.pages.some((id) => open.has(id))) return;
  for (const k of s.older) if (k !== s.active) await caches.delete(k);
}

/** Removes versions that were begun and never used, once this one is whole. */
export async function abandon() {
  const s = await state();
  if (s)
    for (const k of await others())
      if (k !== s.active && !s.older.includes(k)) await caches.delete(k);
}
