// The card: every rule learnt with its colour, form, letters, count and one example, on one sheet.
// Two folds, across and then across again, make four quarters that all stand upright; more rules
// than fit go to the sheet's back.
import { look, pencil, swatch } from '../../colour/ink.ts';
import { ar, h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { spanOf } from '../../marking/spans.ts';
import { EDGE, FOOT, page } from '../../print/paper.ts';
import type { Options } from '../../print/options.ts';
import { counts } from '../../text/counts.ts';
import { verses } from '../../text/data.ts';
import { Stops } from '../../text/stops.ts';
import type { Catalogue, Rule, Settings } from '../../types.ts';
import { boxes, fit } from './fit.ts';
import type { Ink } from './ink.ts';
import { leaf, number } from './leaf.ts';
import { measure } from './measure.ts';

/**
 * In millimetres: height of a rule on the card, at least (unless there are more than two sides
 * hold) and at most; the card's title.
 */
const LEAST = 23,
  MOST = 32,
  TITLE = 9;

export interface CardJob {
  c: Catalogue;
  rules: Rule[];
  options: Options;
  settings: Settings;
  child: string;
}

/**
 * How many rules stand in a quarter, and how high each is: at most eight quarters, the two sides of
 * one sheet.
 */
export function plan(n: number, o: Options): { per: number; high: number } {
  const room = page(o.paper, o.turn)[1] / 2 - EDGE - FOOT - TITLE,
    fit = Math.floor(room / LEAST);
  const per = n <= 4 * fit ? Math.max(1, Math.ceil(n / 4)) : Math.max(fit, Math.ceil(n / 8));
  return { per, high: Math.min(MOST, room / per) };
}

async function example(
  c: Catalogue,
  rule: Rule,
  settings: Settings,
  ink: Ink,
): Promise<{ el: HTMLElement; count: number }> {
  const [s, a, w] = rule.at,
    index = c.rules.indexOf(rule);
  const vs = await verses(c, { s, a }, { s, a }),
    verse = vs[0]!,
    stops = new Stops(vs);
  const e = verse.events.find(
    (x) => x.rule === index && x.w === w && !x.unwritten && stops.holds(0, x),
  );
  // the engine that made the events found the word
  if (!e) throw new Error(`${rule.id}: not in ${s}:${a}`);
  const p = h('p', { class: 'line', lang: 'ar', dir: 'rtl' }),
    m = await measure(vs);
  for (let k = Math.min(w, w + e.cw); k <= Math.max(w, w + e.cw); k++) {
    p.append(
      ink.word(verse.words[k]!, k === w ? [spanOf({ v: 0, e }, look(rule.family))] : [], m, 0, k)
        .el,
    );
  }
  m.drop();
  return {
    el: h('div', { class: 'card-example' }, p, h('span', { class: 'card-ref' }, `${s}:${a}`)),
    count: counts(rule, e, settings).want,
  };
}

async function item(job: CardJob, rule: Rule, ink: Ink): Promise<HTMLElement> {
  const { el, count } = await example(job.c, rule, job.settings, ink),
    { letters } = rule;
  const all = letters && ar([...letters].join(' '), 'ar card-letters');
  return h(
    'li',
    { class: 'card-rule', 'data-rule': rule.id, style: pencil(rule.family) },
    h(
      'div',
      { class: 'card-text' },
      h(
        'p',
        {},
        h('span', { class: 'inked' }, swatch(rule.family), rule.name),
        ' ',
        ar(rule.ar, 'ar'),
        ' ',
        count > 0 && h('span', { class: 'card-count' }, t('print.counts', { n: count })),
      ),
      all,
    ),
    el,
  );
}

/** How many of n rules stand before quarter q of all: as evenly as can be. */
const before = (n: number, quarters: number, q: number) =>
  Math.floor(n / quarters) * q + Math.min(q, n % quarters);

/** Builds the card into box, which must be on screen, unscaled: its words are fitted there. */
export async function card(job: CardJob, box: HTMLElement, ink: Ink): Promise<HTMLElement[]> {
  const { c, rules, options: o } = job,
    { per, high } = plan(rules.length, o),
    items = await Promise.all(rules.map((r) => item(job, r, ink)));
  const leaves: HTMLElement[] = [],
    sides = Math.max(1, Math.ceil(items.length / (4 * per)));
  const share = (q: number) => before(items.length, 4 * sides, q);
  for (let side = 0; side < sides; side++) {
    const quarters = [0, 1, 2, 3].map((q) =>
      h(
        'section',
        { class: 'quarter' },
        q < 2 &&
          h(
            'h2',
            { 'aria-hidden': q > 0 && 'true' },
            q === 0 &&
              (job.child && o.name
                ? t('print.card-of', { child: job.child })
                : t('print.kind.card')),
          ),
        h('ol', {}, items.slice(share(4 * side + q), share(4 * side + q + 1))),
      ),
    );
    leaves.push(
      leaf(
        c,
        'card',
        leaves.length + 1,
        h('div', { class: 'quarters', style: `--item:${high}mm;--per:${per}` }, quarters),
      ),
    );
  }
  number(leaves);
  box.append(...leaves);
  for (const title of boxes(leaves, 'h2')) fit([title], [title]);
  fit(boxes(leaves, 'ol'), boxes(leaves, '.quarter ol, .card-rule, .card-text'));
  return leaves;
}
