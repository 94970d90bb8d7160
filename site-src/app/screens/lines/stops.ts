// What the check says of the stops: where we stop, what the sign there says, and what changes.
import { html } from 'lit-html';
import { t } from '../../i18n.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import { stopFamily } from '../../marking/pencils.ts';
import * as state from '../../state.ts';
import { why } from '../../text/explain.ts';
import type { Stops } from '../../text/stops.ts';
import { Stop } from '../../types.ts';
import { arabic } from '../parts/words.ts';
import { known } from './colours.ts';

/** A word after which one may stop. */
interface Choice {
  v: number;
  w: number;
  word: string;
  words: string[];
}

export function stopsTold(p: Practice) {
  const now = practice.stops(p);
  return html`<section class="told stops" data-t="stops">
    <h2>${t('told.where-we-stop')}</h2>
    <ul>
      ${choices(p, now).map(
        (x) =>
          html`<li class=${now.after(x.v, x.w) ? 'stops-here' : 'reads-on'}>
            <div class="word-links">${arabic(x.word)}</div>
            <p>${x.words.join(' ')}</p>
          </li>`,
      )}
    </ul>
  </section>`;
}

const choices = (p: Practice, now: Stops): Choice[] =>
  p.verses.flatMap((verse, v) =>
    verse.words.flatMap((word, w) => {
      if (!now.after(v, w) && !now.movable(v, w)) return [];
      const what = t(now.after(v, w) ? 'told.stop-here' : 'told.read-on', { a: verse.a });
      return [{ v, w, word: word.text, words: [what, ...changes(p, v, w, now)] }];
    }),
  );

/** What the sign says, and what a stop changes by rules that were taught. */
function changes(p: Practice, v: number, w: number, now: Stops): string[] {
  const { catalogue: c, settings } = state.get();
  const book = { ...c, settings };
  const family = stopFamily(c);
  const taught = known(p);
  const said = p.verses[v]!.events.filter((e) => e.w === w && now.holds(v, e))
    .filter((e) => {
      const rule = c.rules[e.rule]!;
      return rule.family === family || (taught.has(rule.id) && e.when === Stop && !e.before);
    })
    .flatMap((e) => [c.details[e.detail]?.text ?? '', why(book, p.verses, v, e)]);
  return [...new Set(said.filter(Boolean))];
}
