// What the check says: kindly, the way to look again first; then every place with the reason for
// it.
import { html, nothing } from 'lit-html';
import { groupBy } from '../../group.ts';
import { join, t } from '../../i18n.ts';
import type { Alike, Extra, Found, Hit } from '../../marking/check.ts';
import { STOPS } from '../../marking/pencils.ts';
import type { Practice } from '../../practice/practice.ts';
import {
  type Checked,
  found,
  hidden,
  keepsBack,
  placesIn,
  results,
  total,
} from '../../practice/steps.ts';
import * as state from '../../state.ts';
import { why } from '../../text/explain.ts';
import { letterAt, letterName } from '../../text/names.ts';
import { type Mark, samePlace } from '../../types.ts';
import { swatch } from '../parts/pencil.ts';
import { known } from './colours.ts';
import { type Item, list } from './items.ts';
import { onPaper } from './paper.ts';
import { stopsTold } from './stops.ts';

/** The line that sums up: what was found, and how many places each verse still hides. */
export function summary(p: Practice): string {
  if (p.pencils.every((x) => x.id === STOPS)) return t('told.stops');
  const all = results(p);
  const { found: n, of } = total(all);
  const extra = all.reduce((sum, r) => sum + r.extra.length, 0);
  if (of === 0) return t(extra ? 'told.none-marked' : 'told.none');
  if (p.draft.paper) return t('told.on-paper', { n: of });
  if (n === of) return t(extra ? 'told.all-extra' : 'told.all', { n: extra || of, of });
  if (!keepsBack(p)) return inAll(p, n, of);
  return [t('told.so-far', { n }), ...hides(p, all)].join(' ');
}

function inAll(p: Practice, n: number, of: number): string {
  const { looked } = p.draft;
  return looked !== undefined && looked < n
    ? t('told.looked', { looked, n, of })
    : t('told.some', { n, of });
}

/** How many places verses still hide, those that hide as many in one sentence. */
function hides(p: Practice, all: Checked[]): string[] {
  return [...groupBy([...hidden(p, all)], ([, n]) => n)].map(([n, verses]) => {
    const a = join(verses.map(([v]) => String(p.verses[v]!.a)));
    return t(verses.length > 1 ? 'told.hide-each' : 'told.hides', { a, n });
  });
}

/** What is said below the lines. */
export function answer(p: Practice) {
  const all = results(p);
  if (p.draft.paper && p.draft.told !== 'all') return onPaper(p, all);
  return html`
    ${all.length > 1 ? byPencil(all) : nothing}
    ${keepsBack(p) ? nothing : list(p, 'missed', missed(p, all), true)}
    ${list(p, 'extra', apart(p, all), true)} ${list(p, 'alike', alike(p, all), true)}
    ${list(p, 'found', told(p, all), false)}
    ${p.pencils.some((x) => x.id === STOPS) ? stopsTold(p) : nothing}
  `;
}

const byPencil = (all: Checked[]) => html`
  <ul class="by-pencil" data-t="by-pencil">
    ${all.map(
      (r) =>
        html`<li>
          ${swatch(r.pencil.family)}${t('told.by-pencil', {
            pencil: r.pencil.name,
            found: found(r).length,
            n: placesIn(r),
          })}
        </li>`,
    )}
  </ul>
`;

const placed = (x: Hit, words: string): Item => ({ at: { v: x.v, w: x.e.w, l: x.e.l }, words });

const reason = (p: Practice, x: Hit) => why(state.book(), p.verses, x.v, x.e);

const missed = (p: Practice, all: Checked[]): Item[] =>
  all.flatMap((r) => r.missed).map((x) => placed(x, reason(p, x)));

const told = (p: Practice, all: Checked[]): Item[] =>
  all
    .flatMap((r) => r.found)
    .map((x) => placed(x, [counted(x), reason(p, x)].filter(Boolean).join(' ')));

const counted = (f: Found): string =>
  f.count === 'none' ? '' : t(`told.count-${f.count}`, { n: f.mark.count, want: f.want });

/** Marks on other letters, those beside a place that was missed first. */
const apart = (p: Practice, all: Checked[]): Item[] =>
  all.flatMap((r) => [
    ...r.beside.map((at) => ({ at, words: t('told.near') })),
    ...r.extra.map((x) => ({ at: x.mark, words: elsewhere(p, r, x) })),
  ]);

const letterOf = (p: Practice, at: Mark) => letterName(letterAt(p.verses, at));

const elsewhere = (p: Practice, r: Checked, { mark, other }: Extra) =>
  t(other ? 'told.other-stop' : 'told.extra-why', {
    letter: letterOf(p, mark),
    rule: r.pencil.name,
  });

/** What is right for another reason, by its name where that has been taught. */
const alike = (p: Practice, all: Checked[]): Item[] =>
  all.flatMap((r) => r.alike.map((x) => ({ at: x.mark, words: likeness(p, r, x) })));

function likeness(p: Practice, r: Checked, { mark, v, e }: Alike): string {
  const { rules } = state.get().catalogue;
  const rule = rules[e.rule]!;
  // What they have in common is said of the rule in hand.
  const own = r.pencil.rules.map((i) => rules[i]!);
  const { sound } = own.find((x) => x === rule || x.alike?.includes(rule.id)) ?? rule;
  const yes = sound ? t('told.alike-sound', { sound }) : t('told.alike-yes');
  const onIt = samePlace(mark, { v, w: e.w, l: e.l });
  const here = onIt ? '' : (rule.onCause ?? '');
  const name = t(known(p).has(rule.id) ? 'told.alike-named' : 'told.alike-later', {
    rule: rule.name,
  });
  return [yes, here, r.pencil.rules.includes(e.rule) ? '' : name].filter(Boolean).join(' ');
}
