// Which version of the site this page is of.
import { prefixOf, stateOf } from '../worker/names.ts';

/** How much of the digest that names a version is shown. */
const SHOWN = 8;

/**
 * The version that is kept and has this page's script, the one in use before others; '' where none
 * has.
 */
export async function version(): Promise<string> {
  try {
    const { scope } = (await navigator.serviceWorker.getRegistration())!;
    const script = document.querySelector<HTMLScriptElement>('script[type=module]')!.src;
    const used = await (await caches.open(stateOf(scope))).match(scope);
    const { active } = (await used!.json()) as { active: string };
    for (const name of [active, ...(await caches.keys())]) {
      if (name.startsWith(prefixOf(scope)) && (await (await caches.open(name)).match(script)))
        return name.slice(prefixOf(scope).length).slice(0, SHOWN);
    }
  } catch {
    // nothing is kept
  }
  return '';
}
