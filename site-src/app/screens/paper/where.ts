// Which lines: verses of a surah, or a surah, page or juz whole.
import { html } from 'lit-html';
import { type Key, t } from '../../i18n.ts';
import { number, type Options } from '../../paper/options.ts';
import { part, type Part, partAt, partCount, PARTS, type Whole } from '../../paper/passage.ts';
import type { Catalogue } from '../../types.ts';
import { numberField } from '../parts/number.ts';
import { surahSelect } from '../parts/surahs.ts';
import { change } from './printing.ts';

/** Verses that are taken where only a surah was named. */
const VERSES = 10;

export const where = (c: Catalogue, o: Options) => html`
  <div class="fields place">
    ${field('print.part', 'print-part', partSelect(c, o))} ${fieldsOf(c, o)}
  </div>
`;

const field = (label: Key, id: string, control: unknown) =>
  html`<div><label for=${id}>${t(label)}</label>${control}</div>`;

function partSelect(c: Catalogue, o: Options) {
  const choose = (e: Event) => {
    const to = (e.target as HTMLSelectElement).value as Part;
    if (to !== 'verses') return change({ part: to, ...part(c, to, partAt(c, to, o.from))! });
    const { s, a } = o.from;
    change({ part: to, to: { s, a: Math.min(c.surahs[s - 1]!.count, a + VERSES - 1) } });
  };
  return html`<select id="print-part" data-t="print-part" @change=${choose}>
    ${PARTS.map(
      (p) => html`<option value=${p} .selected=${p === o.part}>${t(`print.part.${p}`)}</option>`,
    )}
  </select>`;
}

function fieldsOf(c: Catalogue, o: Options) {
  if (o.part === 'surah') return surahField(c, o);
  if (o.part === 'verses')
    return [
      surahField(c, o),
      field('field.from', 'print-from', verseInput(c, o, 'from')),
      field('field.to', 'print-to', verseInput(c, o, 'to')),
    ];
  const { part: by } = o;
  const id = `print-${by}`;
  const control = numberInput(id, partCount(c, by), number(c, o) || 1, (n) => whole(c, by, n));
  return field(`print.part.${by}`, id, control);
}

const whole = (c: Catalogue, by: Whole, n: number) => change({ part: by, ...part(c, by, n)! });

function surahField(c: Catalogue, o: Options) {
  const choose = (s: number) => {
    if (o.part === 'surah') return whole(c, 'surah', s);
    change({ from: { s, a: 1 }, to: { s, a: Math.min(VERSES, c.surahs[s - 1]!.count) } });
  };
  return field('field.surah', 'print-surah', surahSelect(c, 'print-surah', o.from.s, choose));
}

function verseInput(c: Catalogue, o: Options, key: 'from' | 'to') {
  const { s } = o.from;
  return numberInput(`print-${key}`, c.surahs[s - 1]!.count, o[key].a, (a) => {
    const from = key === 'from' ? a : o.from.a;
    const to = key === 'to' ? a : o.to.s === s ? o.to.a : a;
    // The one just typed stands; the other follows where they would cross.
    change({
      from: { s, a: key === 'to' ? Math.min(from, to) : from },
      to: { s, a: key === 'from' ? Math.max(from, to) : to },
    });
  });
}

const numberInput = (id: string, most: number, now: number, choose: (n: number) => void) =>
  numberField({ id, least: 1, most, now, usual: 1, choose });
