// Pages and style sheets within the one file.
import type { Screen } from '../screens/screen.ts';
import { verified } from '../text/fetch.ts';
import { held } from './files.one.ts';

export const pageText = async (name: string) =>
  new TextDecoder().decode(await verified(name, held(name)?.dataset.sha ?? ''));

export const pageScreen = (): Promise<Screen> =>
  import('../screens/read/read.ts').then((m) => m.read);

const wanted = new Set<string>();

/** All of them are there, and each takes effect when it is asked for, as on the site. */
export function sheet(name: string): Promise<void> {
  wanted.add(name);
  styles(false);
  return Promise.resolve();
}

/** Has the sheet of the pages in effect, as on the site, or those of the screens. */
export function styles(ofPages: boolean) {
  for (const s of document.querySelectorAll<HTMLStyleElement>('style[data-sheet]')) {
    const name = s.dataset.sheet!;
    s.media = (ofPages ? name === 'one-file' : wanted.has(name)) ? 'all' : 'not all';
  }
}

export const isThere = () => Promise.resolve(true);
