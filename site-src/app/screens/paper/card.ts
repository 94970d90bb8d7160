// The card: every rule learnt with its colour, form, letters, count and one example, on one sheet.
// Two folds, across and then across again, make four quarters that all stand upright; more rules
// than fit go to the sheet's back.
import { html, nothing, render } from 'lit-html';
import { look } from '../../colour/ink.ts';
import { t } from '../../i18n.ts';
import { spanOf } from '../../marking/spans.ts';
import type { Options } from '../../paper/options.ts';
import { quarters, type Share, share } from '../../paper/quarters.ts';
import { counts } from '../../text/counts.ts';
import { verses } from '../../text/data.ts';
import { Stops } from '../../text/stops.ts';
import type { Catalogue, Event, Rule, Verse } from '../../types.ts';
import { pencil, swatch } from '../parts/pencil.ts';
import { arabic } from '../parts/words.ts';
import { boxes, fit } from './fit.ts';
import { type InkedWord, inkedWord, paint } from './ink.ts';
import type { Job } from './job.ts';
import { measure, wordOf } from './measure.ts';
import { fitStyle, page } from './page.ts';

/** A rule with the words of its example and how long it is held there, 0 for not. */
interface Item {
  rule: Rule;
  words: InkedWord[];
  count: number;
}

export interface CardLayout {
  sheet: 'card';
  c: Catalogue;
  options: Options;
  /** The learner's name, empty where it is not written. */
  child: string;
  /** The items by side and quarter. */
  sides: Item[][][];
  share: Share;
  inked: InkedWord[];
  /** How much smaller the titles are made, in order, and all rules. */
  fits?: { titles: number[]; rules: number };
}

/** Fits the words of the card in box, which must be on the page, in full size. */
export async function layOutCard(job: Job, box: HTMLElement): Promise<CardLayout> {
  const { c, learnt, options } = job;
  const items = await Promise.all(learnt.map((r) => itemOf(job, r)));
  const each = share(items.length, options);
  const layout: CardLayout = {
    sheet: 'card',
    c,
    options,
    child: options.name ? (job.learner?.name ?? '') : '',
    sides: quarters(items, each.per),
    share: each,
    inked: items.flatMap((x) => x.words),
  };
  render(cardPages(layout), box);
  paint(box, layout.inked);
  const titles = boxes(box, 'h2').map((x) => fit([x], [x]));
  const rules = fit(boxes(box, 'ol'), boxes(box, '.quarter ol, .card-rule, .card-text'));
  return { ...layout, fits: { titles, rules } };
}

async function itemOf({ c, settings }: Job, rule: Rule): Promise<Item> {
  const [s, a, w] = rule.at;
  const at = { s, a };
  const vs = await verses(c, at, at);
  const e = exampleOf(c, rule, vs);
  const { words } = vs[0]!;
  const m = await measure(vs);
  const last = Math.max(w, w + e.cw);
  const spans = [spanOf({ v: 0, e }, look(rule.family))];
  const out: InkedWord[] = [];
  for (let k = Math.min(w, w + e.cw); k <= last; k++)
    out.push(inkedWord(words[k]!, { v: 0, w: k }, k === w ? spans : [], m));
  m.drop();
  return { rule, words: out, count: counts(rule, e, settings).want };
}

function exampleOf(c: Catalogue, rule: Rule, vs: Verse[]): Event {
  const [s, a, w] = rule.at;
  const index = c.rules.indexOf(rule);
  const stops = new Stops(vs);
  const e = vs[0]!.events.find(
    (x) => x.rule === index && x.w === w && !x.unwritten && stops.holds(0, x),
  );
  // the engine that made the events found the word
  if (!e) throw new Error(`${rule.id}: not in ${s}:${a}`);
  return e;
}

export const cardPages = (l: CardLayout) =>
  l.sides.map((side, i) =>
    page(
      l.c,
      'card',
      i + 1,
      l.sides.length,
      html`
        <div class="quarters" .style=${`--item:${l.share.height}mm;--per:${l.share.per}`}>
          ${side.map((items, q) => quarter(l, items, i, q))}
        </div>
      `,
    ),
  );

const quarter = (l: CardLayout, items: Item[], side: number, q: number) => html`
  <section class="quarter">
    ${q < 2 ? heading(l, q, l.fits?.titles[2 * side + q]) : nothing}
    <ol .style=${fitStyle(l.fits?.rules)}>
      ${items.map(itemView)}
    </ol>
  </section>
`;

/** The title, and beside it an empty place as high. */
function heading({ child }: CardLayout, q: number, fit: number | undefined) {
  const title = child ? t('print.card-of', { child }) : t('print.kind.card');
  return html`<h2 aria-hidden=${q ? 'true' : nothing} .style=${fitStyle(fit)}>
    ${q ? nothing : title}
  </h2>`;
}

const itemView = ({ rule, words, count }: Item) => html`
  <li class="card-rule" data-rule=${rule.id} .style=${pencil(rule.family)}>
    <div class="card-text">
      <p>
        <span class="inked">${swatch(rule.family)}${rule.name}</span> ${arabic(rule.ar)}
        ${
          count ? html`<span class="card-count">${t('print.counts', { n: count })}</span>` : nothing
        }
      </p>
      ${rule.letters ? arabic([...rule.letters].join(' '), 'ar card-letters') : nothing}
    </div>
    <div class="card-example">
      <p class="line" lang="ar" dir="rtl">${words.map((x) => wordOf(x.word))}</p>
      <span class="card-ref">${`${rule.at[0]}:${rule.at[1]}`}</span>
    </div>
  </li>
`;
