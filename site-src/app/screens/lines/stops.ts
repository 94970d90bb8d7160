// What the check says of the stops: where we stop, what the sign there says, and what changes.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import { stopFamily } from '../../marking/pencils.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import * as state from '../../state.ts';
import { why } from '../../text/explain.ts';
import { type Event, Stop } from '../../types.ts';
import { known } from './colours.ts';
import { type Item, rows } from './items.ts';

export function stopsTold(p: Practice) {
  const now = practice.stops(p);
  const tells = telling(p);
  const last = (v: number, w: number) => p.verses[v]!.words[w]!.letters.length - 1;
  const items = (stops: boolean): Item[] =>
    p.verses.flatMap((verse, v) =>
      verse.words.flatMap((_, w) =>
        now.after(v, w) === stops && (stops || now.movable(v, w))
          ? [
              {
                at: { v, w, l: last(v, w) },
                words: said(p, v, w, (e) => tells(e) && now.holds(v, e)),
              },
            ]
          : [],
      ),
    );
  return html`<section class="told stops" data-t="stops">
    ${part(p, 'told.stop-here', items(true))} ${part(p, 'told.read-on', items(false))}
  </section>`;
}

const part = (p: Practice, title: 'told.stop-here' | 'told.read-on', items: Item[]) =>
  items.length
    ? html`<h2>${t(title)}</h2>
        ${rows(p, 'stops', items)}`
    : nothing;

/** Whether an event is a sign, or a change at a stop by a rule that was taught. */
function telling(p: Practice) {
  const { catalogue: c } = state.get();
  const family = stopFamily(c);
  const taught = known(p);
  return (e: Event) => {
    const rule = c.rules[e.rule]!;
    return rule.family === family || (taught.has(rule.id) && e.when === Stop && !e.before);
  };
}

/** What is said of the events at a word. */
function said(p: Practice, v: number, w: number, tells: (e: Event) => boolean): string {
  const book = state.book();
  const here = p.verses[v]!.events.filter((e) => e.w === w && tells(e));
  const words = here.flatMap((e) => [
    why(book, p.verses, v, e),
    book.details[e.detail]?.text ?? '',
  ]);
  return [...new Set(words.filter(Boolean))].join(' ') || t('told.no-change');
}
