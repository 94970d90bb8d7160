// What a word of the trade means. The glossary page says it, and is kept with everything else: its
// words are read from there, so that they stand in one place.
import { page } from '../edition/files.ts';
import { pageText } from '../edition/pages.ts';
import { parsed } from '../offline/trusted.ts';
import * as state from '../state.ts';

const GLOSSARY = 'lessons/glossary.html';

/** The glossary's own anchor for a term (generator/internal/lesson/glossary.go). */
const anchorOf = (name: string) => `t-${(name.toLowerCase().match(/[a-z0-9]+/g) ?? []).join('-')}`;

/** Where the glossary explains a term. */
export const termPath = (name: string) => page(`${GLOSSARY}#${anchorOf(name)}`);

/** Says at the foot of the page what a term means; where that cannot be read, goes to its page. */
export async function explainTerm(name: string) {
  try {
    const glossary = parsed(await pageText(GLOSSARY));
    const meaning = glossary.getElementById(anchorOf(name))?.querySelector('dd')?.textContent;
    if (!meaning) throw new Error(`the glossary has no ${name}`);
    state.set({ notice: { text: `${name}: ${meaning}`, hold: true, name: 'term' } });
  } catch {
    location.assign(termPath(name));
  }
}
