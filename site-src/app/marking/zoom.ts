// A held word opens large, every letter a target of its own of at least 44 px. Each target shows its slice of the whole
// word, so that the joined forms stay as they are in the line.
import { h } from '../dom.ts';
import { t } from '../i18n.ts';
import { lamAlif, stands } from '../text/letters.ts';
import { lined } from '../text/lined.ts';
import { letterName, spoken } from '../text/names.ts';
import type { Verse } from '../types.ts';
import { paint, ranges, type Span, unpaint } from './paint.ts';
import { Sheet } from './sheet.ts';

export interface Zoom { close: () => void; update: () => void }

export interface ZoomProps {
  verses: Verse[]; v: number; w: number;
  marked: (l: number) => boolean; name: string; colour: string; choose: (l: number) => void; closed: () => void; label: string;
}

const PAD = 10; // pixels of the neighbours that are seen, faint, at either side

/**
 * One slice: the word again, faint, moved so that letter l is in the middle, and that letter in ink: by a range, or, where
 * a letter is drawn together with its neighbour, by a copy of the word cut to it.
 */
function face(s: Shown, l: number, box: DOMRect): { el: HTMLElement; range: Range | undefined } {
  const b = Sheet.box(s, l), over = stands(s.word, l), bears = stands(s.word, l + 1);
  const one = ranges && !over && !bears && !lamAlif(s.word, l) && !lamAlif(s.word, l - 1);
  const at = `left:${box.left - b.left + PAD}px;width:${box.width}px`;
  const copy = (cls: string, cut = '') => h('span', { class: cls, lang: 'ar', style: at + cut }, s.word.text);
  const faint = copy('slice-word');
  const el = h('span', { class: 'slice', style: `width:${b.right - b.left + 2 * PAD}px;height:${box.height}px`, 'aria-hidden': 'true' }, faint);
  if (one) return { el, range: Sheet.range({ ...s, node: faint.firstChild as Text }, l) };
  const top = bears ? `${Sheet.split(s, l + 1, b) - box.top}px` : '-.4em', bottom = over ? `${box.bottom - Sheet.split(s, l, b)}px` : '-.4em';
  el.append(copy('slice-word ink', `;clip-path:inset(${top} ${box.right - b.right}px ${bottom} ${b.left - box.left}px)`));
  return { el, range: undefined };
}
type Shown = NonNullable<ReturnType<Sheet['word']>>;

export function zoom(p: ZoomProps): Zoom {
  const word = p.verses[p.v]!.words[p.w]!, sheet = new Sheet();
  const big = h('span', { class: `w${lined([word], 0)}`, lang: 'ar', 'data-t': 'zoom-word' }, word.text), over = h('div', { class: 'layer', 'aria-hidden': 'true' });
  sheet.add(p.v, p.w, big, p.verses);
  const row = h('div', { class: 'zoom-letters', dir: 'rtl', 'data-t': 'zoom-letters' });
  const box = h('dialog', { class: 'zoom', 'aria-label': p.label, 'data-t': 'zoom' },
    h('div', { class: 'zoom-word', dir: 'rtl' }, big, over), h('p', { class: 'quiet' }, t('zoom.hint')), row,
    h('button', { class: 'main', 'data-t': 'zoom-close', onclick: () => box.close() }, t('zoom.close')));
  box.addEventListener('close', () => { unpaint('zoom'); box.remove(); p.closed(); });
  // The finger that held the word is lifted over the dialog: that click is not meant for it.
  let own = false;
  box.addEventListener('pointerdown', () => { own = true; }, true);
  box.addEventListener('click', (e) => { if (!own && e.detail > 0) { e.stopPropagation(); e.preventDefault(); } }, true);
  box.addEventListener('click', (e) => {
    const r = box.getBoundingClientRect();
    if (e.target === box && (e.clientY < r.top || e.clientY > r.bottom || e.clientX < r.left || e.clientX > r.right)) box.close();
  });
  big.addEventListener('click', (e) => { const at = sheet.hit(e.clientX, e.clientY); if (at) p.choose(at.l); });
  document.body.append(box);
  box.showModal();

  const at = big.getBoundingClientRect(), s = sheet.word(p.v, p.w)!;
  const faces = word.letters.map((_, l) => face(s, l, at)), whole = faces.flatMap((f) => f.range ?? []);
  if (ranges) CSS.highlights.set('slice', new Highlight(...whole));
  word.letters.forEach((x, l) => row.append(h('button', {
    class: 'zoom-letter', 'data-t': `zoom-letter-${l}`, 'aria-label': spoken(x), onclick: () => p.choose(l),
  }, faces[l]!.el, h('span', { class: 'zoom-name', 'aria-hidden': 'true', lang: document.documentElement.lang, dir: 'auto' }, letterName(x)))));
  row.addEventListener('keydown', (e) => {
    const by = e.key === 'ArrowLeft' ? 1 : e.key === 'ArrowRight' ? -1 : 0, all = [...row.children] as HTMLElement[];
    if (by) all[all.indexOf(document.activeElement as HTMLElement) + by]?.focus();
  });
  (row.firstElementChild as HTMLElement | null)?.focus();

  const update = () => {
    const spans: Span[] = [];
    word.letters.forEach((_, l) => {
      const b = row.children[l] as HTMLElement, on = p.marked(l);
      b.setAttribute('aria-pressed', String(on));
      b.style.setProperty('--pencil', p.colour);
      if (on) spans.push({ v: p.v, w: p.w, l, n: 1, name: p.name, colour: p.colour });
    });
    box.style.setProperty('--pencil', p.colour);
    paint(sheet, over, spans, 'zoom');
  };
  update();
  return { close: () => box.close(), update };
}
