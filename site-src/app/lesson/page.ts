// What a script adds to a page that is read: colours the letters of its examples by ranges, folds what
// follows the first minute, turns the examples as cards, fills counts, leads back to the lines it was
// opened from. Without it the whole word is set off and everything is open.
import { beat } from '../beat/beat.ts';
import type { Sign } from '../marking/signs.ts';
import { familyLook, type Span } from '../marking/spans.ts';
import { paint, unpaint } from '../painting/paint.ts';
import { Sheet } from '../painting/sheet.ts';
import { words } from '../text/letters.ts';
import { cards } from './cards.ts';
import { fold, unfolded } from './fold.ts';
import { today } from './today.ts';

/**
 * Does all of it; at is what the page's address has after its #. What listens to the window does so
 * until the page is left, which the one file alone does without leaving the document.
 */
export function enliven(page: ParentNode, at: string, left?: AbortSignal): void {
  page.querySelectorAll<HTMLElement>('[data-marks]').forEach(colour);
  today(page, at);
  fold(page, at, left);
  cards(page);
  page.querySelectorAll<HTMLElement>('.beat').forEach(counts);
}

/** Takes the colours of a page away that is left. */
export const still = () => painted.splice(0).forEach(unpaint);

const painted: string[] = [];

/**
 * One figure, or words within a sentence: data-marks holds "word.letter:rule", letters counted from
 * 0. The word's own set-off names the family.
 */
function colour(figure: HTMLElement, n: number) {
  const text = figure.querySelector<HTMLElement>('.ayah') ?? figure;
  const sheet = new Sheet();
  const spans: Span[] = [];
  const els = new Map(
    [...text.querySelectorAll<HTMLElement>('.w')].map((w) => [Number(w.dataset.w), w]),
  );
  const all = [...els].map(([i, el]) => ({ i, el, word: words(el.textContent)[0]! }));
  for (const x of all) sheet.put({ v: 0, w: x.i, el: x.el, node: textOf(x.el), word: x.word });
  for (const m of (figure.dataset.marks ?? '').matchAll(/(\d+)\.(\d+):/g)) {
    const w = Number(m[1]);
    const l = Number(m[2]);
    const el = els.get(w);
    const set = el?.closest('mark') ?? el?.querySelector('mark');
    const family = /(?:^|\s)f-([\w-]+)/.exec(set?.className ?? '')?.[1];
    const sign = family && form(family);
    if (!el || !sign) continue; // without its style sheet a page keeps the whole word set off
    spans.push({ v: 0, w, l, ...familyLook(family, sign) });
    set?.classList.add('by-letter');
  }
  const owner = `figure-${n}`;
  painted.push(owner);
  const draw = () => unfolded(figure, () => paint(sheet, figure, spans, owner));
  draw();
  sheet.whenFont(text.textContent, draw);
}

/** The shape of a family, which the style sheet names: these pages do without the catalogue. */
const form = (family: string) =>
  getComputedStyle(document.documentElement).getPropertyValue(`--form-${family}`).trim() as Sign;

function textOf(el: HTMLElement): Text {
  return document.createTreeWalker(el, NodeFilter.SHOW_TEXT).nextNode() as Text;
}

/** The lengths stand in the page, and so do the words. */
function counts(host: HTMLElement) {
  const lengths = [...host.querySelectorAll<HTMLElement>('[data-counts]')].map((li) => ({
    name: li.querySelector('.beat-name')!.textContent.replace(/\s+/g, ' ').trim(),
    counts: Number(li.dataset.counts),
  }));
  const d = host.dataset;
  beat(host, lengths, {
    hint: d.hint!,
    still: host.querySelector('p')!.textContent,
    tap: d.tap!,
    more: d.more!,
    pace: (n) => d.pace!.replace('{n}', n),
  });
}
