// One row of a sheet: the words of a line, the ring at a verse's end, and in the margin the numbers
// of the verses that end on it; or the head of a surah.
import { html, nothing } from 'lit-html';
import { endsVerse, type Row } from '../../paper/rows.ts';
import { arabicDigits } from '../../text/digits.ts';
import { opens } from '../../text/data.ts';
import { lined } from '../../text/lined.ts';
import type { Catalogue, Verse, WordAt } from '../../types.ts';
import { wordOf } from './measure.ts';

/** The passage that rows are of. */
export interface Passage {
  verses: Verse[];
  basmala: string;
}

export const row = (c: Catalogue, p: Passage, r: Row, answers: boolean) =>
  'head' in r ? surahHead(c, r.head, p.basmala) : line(p.verses, r.words, answers);

/** Spaces between words are part of the words: there are no others. */
function line(verses: Verse[], at: WordAt[], answers: boolean) {
  const words = at.map((x) => verses[x.v]!.words[x.w]!);
  const ends = at.filter((x) => endsVerse(verses, x));
  const set = at.map((x, i) => [
    wordOf(words[i]!, lined(words, i)),
    ends.includes(x) ? html`<span class=${answers ? 'ring full' : 'ring'}></span>` : nothing,
  ]);
  return html`
    <div class="row-line">
      <p class="line" lang="ar" dir="rtl">${set}</p>
      <span class="numbers" lang="ar"
        >${ends.map((x) => html`<span>${arabicDigits(verses[x.v]!.a)}</span>`)}</span
      >
    </div>
  `;
}

/**
 * The name of a surah before its first verse, with the basmala where the text has it before a surah
 * and not as a verse.
 */
const surahHead = (c: Catalogue, s: number, basmala: string) => html`
  <div class="row-line head" lang="ar" dir="rtl">
    <span class="surah-name">${c.surahs[s - 1]!.ar}</span>
    ${basmala && opens(s) ? html`<span class="basmala" .textContent=${basmala}></span>` : nothing}
  </div>
`;
