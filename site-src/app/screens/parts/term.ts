// Words that a parent may not know open their meaning by a tap.
import { html, type TemplateResult } from 'lit-html';
import { explainTerm, termPath } from '../../actions/terms.ts';

/** A term of the glossary by its name there; words are what is written. */
export function term(name: string, words: string) {
  const open = (e: MouseEvent) => {
    if (e.ctrlKey || e.metaKey || e.shiftKey) return; // into a tab of its own
    e.preventDefault();
    void explainTerm(name);
  };
  return html`<a class="term-link" href=${termPath(name)} data-t="term" @click=${open}
    >${words}</a
  >`;
}

/** Words of the interface that are terms, as the glossary names them. */
const TERMS = ['Juz', 'Surah', 'Mushaf'];

const FIRST = new RegExp(`\\b(${TERMS.join('|')})\\b`, 'i');

/** A sentence in which the first such word opens its meaning. */
export function withTerm(sentence: string): string | TemplateResult {
  const m = FIRST.exec(sentence);
  if (!m) return sentence;
  const [words] = m;
  const name = TERMS.find((x) => x.toLowerCase() === words.toLowerCase())!;
  const rest = sentence.slice(m.index + words.length);
  return html`${sentence.slice(0, m.index)}${term(name, words)}${rest}`;
}
