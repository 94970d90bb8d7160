// The counts that can be written: only those that the pencil in hand can have.
import { html, nothing } from 'lit-html';
import { join, t } from '../../i18n.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import * as state from '../../state.ts';
import { say } from './say.ts';

export function counts(p: Practice) {
  const { how, lengths } = practice.counting(p);
  if (how === 'none') return nothing;
  return how === 'all' ? once(p, lengths[0]!) : each(p, lengths);
}

/** One length for all letters of the pencil. */
const once = (p: Practice, n: number) => html`
  <div class="counts" role="group" aria-label=${t('count.label')}>
    <span class="quiet">${t('count.all')}</span>
    ${chip(n, p.draft.lengths?.[p.hand] === n, () => countAll(p, n))}
  </div>
`;

/** The counts that can be written at the letter marked last, and a way to take its mark away. */
function each(p: Practice, lengths: number[]) {
  const at = p.caret;
  const mark = at && practice.marked(p, at);
  return html`<div class="counts" role="group" aria-label=${t('count.label')}>
    <span class="quiet">${t(mark ? 'count.here' : 'count.first')}</span>
    ${lengths.map((n) => chip(n, mark?.count === n, () => at && practice.count(at, n), !mark))}
    <button
      class="chip"
      data-t="unmark"
      ?disabled=${!mark}
      aria-label=${t('count.unmark')}
      title=${t('count.unmark')}
      @click=${() => at && practice.mark(at, false)}
    >
      ×
    </button>
  </div>`;
}

const chip = (n: number, on: boolean, press: () => void, disabled = false) => html`
  <button class="chip" data-t="count-${n}" ?disabled=${disabled} aria-pressed=${on} @click=${press}>
    ${n}
  </button>
`;

/**
 * A count typed on the keyboard; one that no letter here can have is refused in words. Whether it
 * was written at the letter, which is then to be said.
 */
export function typed(p: Practice, n: number): boolean {
  const { how, lengths } = practice.counting(p);
  if (how === 'none') return refuse(t('count.none'));
  if (!lengths.includes(n)) {
    const list = join(lengths.map(String));
    return refuse(t('count.refused', { n, list }));
  }
  if (how === 'each' && p.caret) practice.count(p.caret, n);
  else countAll(p, n);
  return how === 'each';
}

/** Writes the count of all letters of the pencil, and says so. */
function countAll(p: Practice, n: number) {
  practice.countAll(n);
  const letter = practice.inHand(p)?.name ?? '';
  const written = practice.get()?.draft.lengths?.[p.hand];
  say(t(written ? 'say.counted' : 'say.uncounted', { letter, n }));
}

function refuse(text: string) {
  say(text);
  state.set({ notice: { text } });
  return false;
}
