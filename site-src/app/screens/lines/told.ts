// What the check says: kindly, the way to look again first; then every place with the reason for
// it.
import * as state from '../../state.ts';
import { ar, h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { type Found, type Hit, written } from '../../marking/check.ts';
import { sample } from '../../marking/pieces.ts';
import { why } from '../../text/explain.ts';
import { letterAt, letterName } from '../../text/names.ts';
import type { Place } from '../../types.ts';
import * as live from './live.ts';

const book = () => ({ ...state.get().catalogue, settings: state.get().settings });

/** The line that sums up: what was found, and where to look once more. */
export function summary(l: live.Live): string {
  const r = live.result(l),
    n = r.found.filter((f) => !f.e.unwritten).length,
    of = n + r.missed.length;
  if (of === 0) return t(r.extra.length ? 'told.none-marked' : 'told.none');
  if (r.missed.length === 0)
    return t(r.extra.length ? 'told.all-extra' : 'told.all', { n: r.extra.length || of, of });
  return t('told.some', { n, of, a: l.verses[r.missed[0]!.v]!.a });
}

const item = (l: live.Live, p: Place, cls: string, ...text: (string | false)[]) =>
  h(
    'li',
    { class: cls },
    h(
      'button',
      {
        class: 'word-link',
        onclick: () => live.set({ explained: p, caret: p }),
        'aria-label': t('told.show', { a: l.verses[p.v]!.a }),
      },
      ar(l.verses[p.v]!.words[p.w]!.text),
    ),
    h('p', {}, text.filter(Boolean).join(' ')),
  );

function counted(f: Found): string | false {
  return f.count !== 'none' && t(`told.count-${f.count}`, { n: f.mark.count, want: f.want });
}

export function told(l: live.Live): HTMLElement[] {
  const r = live.result(l),
    at = (x: Hit): Place => ({ v: x.v, w: x.e.w, l: x.e.l });
  const block = (key: 'missed' | 'extra' | 'found', items: HTMLElement[], open: boolean) =>
    items.length > 0 &&
    h(
      'details',
      { class: `told ${key}`, open, 'data-t': key },
      h('summary', {}, sample(key, `var(--${key})`), t(`told.${key}`, { n: items.length })),
      h('ul', {}, items),
    );
  const extra = r.extra.map(({ mark, other }) =>
    item(
      l,
      mark,
      'extra',
      t(other ? 'told.other-stop' : 'told.extra-why', {
        letter: letterName(letterAt(l.verses, mark)),
        rule: l.rule!.name,
      }),
    ),
  );
  return [
    block(
      'missed',
      r.missed.map((m) =>
        item(l, at(m), 'missed', m.near && t('told.near'), why(book(), l.verses, m.v, m.e)),
      ),
      true,
    ),
    block('extra', extra, true),
    block(
      'found',
      r.found.map((f) => item(l, at(f), 'found', counted(f), why(book(), l.verses, f.v, f.e))),
      false,
    ),
  ].filter((x) => x instanceof HTMLElement);
}

/** How many places there are in each verse, for a hint that gives no letter away. */
export function perVerse(l: live.Live): { a: number; n: number }[] {
  const all = written(l.verses, [l.index], live.stops(l));
  return l.verses
    .map((v, i) => ({ a: v.a, n: all.filter((x) => x.v === i).length }))
    .filter((x) => x.n);
}
