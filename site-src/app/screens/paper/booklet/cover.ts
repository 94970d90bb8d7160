// The front of a booklet: whose it is, what it holds and where, and the cautions, once.
import { html } from 'lit-html';
import { t } from '../../../i18n.ts';
import { versesOf } from '../../../paper/booklet.ts';
import { linesName } from '../../../text/names.ts';
import { arabic } from '../../parts/words.ts';
import { fillIn } from '../page.ts';
import type { BookletLayout } from './layout.ts';

export function cover(l: BookletLayout) {
  const { juz } = l.options.booklet;
  const { from, to } = versesOf(l.c, l.options.booklet);
  return html`
    <div class="cover">
      <header class="cover-head">
        <h2>${t('next.juz', { n: juz })}</h2>
        <p>${linesName(l.c.surahs, from, to)}</p>
        ${fillIn(t('print.name'), l.child)}
      </header>
      ${contents(l)}
      <div class="cover-foot">
        <p>${t('caution')}</p>
        <p>${t('print.respect')}</p>
      </div>
    </div>
  `;
}

/** The surahs with the page on which each begins. */
function contents(l: BookletLayout) {
  const list = surahs(l);
  return html`<ol class="contents" .style=${`--lines:${Math.ceil(list.length / 2)}`}>
    ${list.map(
      ({ s, page }) => html`
        <li data-surah=${s} data-page-of=${page}>
          <span>${`${s}. ${l.c.surahs[s - 1]!.la}`}</span> ${arabic(l.c.surahs[s - 1]!.ar)}
          <span class="dots"></span><span>${page}</span>
        </li>
      `,
    )}
  </ol>`;
}

function surahs({ passage: { verses }, practice: { rows, starts }, leaves }: BookletLayout) {
  const first = leaves.findIndex((x) => x.is === 'practice');
  return [...new Set(verses.map((v) => v.s))].map((s) => {
    const row = rows.findIndex((r) =>
      'head' in r ? r.head === s : verses[r.words[0]!.v]!.s === s,
    );
    return { s, page: first + starts.filter((x) => x <= row).length };
  });
}
