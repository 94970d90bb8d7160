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
  const last = (v: number, w: number) => p.verses[v]!.words[w]!.letters.length - 1;
  const items = (stops: boolean): Item[] =>
    p.verses.flatMap((verse, v) =>
      verse.words.flatMap((_, w) =>
        now.after(v, w) === stops && (stops || now.movable(v, w))
          ? [{ at: { v, w, l: last(v, w) }, words: said(p, v, w) }]
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

/** What the sign says, and what a stop changes by rules that were taught. */
function said(p: Practice, v: number, w: number): string {
  const { catalogue: c, settings } = state.get();
  const now = practice.stops(p);
  const family = stopFamily(c);
  const taught = known(p);
  const tells = (e: Event) => {
    const rule = c.rules[e.rule]!;
    return rule.family === family || (taught.has(rule.id) && e.when === Stop && !e.before);
  };
  const words = p.verses[v]!.events.filter((e) => e.w === w && now.holds(v, e) && tells(e)).flatMap(
    (e) => [why({ ...c, settings }, p.verses, v, e), c.details[e.detail]?.text ?? ''],
  );
  return [...new Set(words.filter(Boolean))].join(' ') || t('told.no-change');
}
