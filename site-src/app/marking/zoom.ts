// A held word opens large, every letter a target of its own of at least 44 px. Each target shows
// its slice of the whole word, so that the joined forms stay as they are in the line.
import { h } from '../dom.ts';
import { t } from '../i18n.ts';
import { stands } from '../text/letters.ts';
import { lined } from '../text/lined.ts';
import { letterName, spoken } from '../text/names.ts';
import type { Verse } from '../types.ts';
import { paint, unpaint } from './paint.ts';
import { Sheet } from './sheet.ts';
import type { Look } from './spans.ts';

export interface Zoom {
  close: () => void;
  update: () => void;
}

export interface ZoomProps {
  verses: Verse[];
  v: number;
  w: number;
  marked: (l: number) => boolean;
  look: Look;
  choose: (l: number) => void;
  closed: () => void;
  label: string;
}

const PAD = 10; // pixels of the neighbours that are seen, faint, at either side

/**
 * One slice: the word again, faint, moved so that letter l is in the middle, and over it a copy cut
 * to that letter, in ink or, when it is marked, in the pencil's colour.
 */
function face(s: Shown, l: number, box: DOMRect): HTMLElement {
  const b = Sheet.box(s, l),
    at = `left:${box.left - b.left + PAD}px;width:${box.width}px`;
  const inside = (up: number) => `${Sheet.base(s) - up * Sheet.em(s) - box.top}px`;
  const top = stands(s.word, l + 1) ? inside(Sheet.crown(s, l + 1)) : '-.4em';
  const bottom = stands(s.word, l) ? `calc(100% - ${inside(Sheet.crown(s, l))})` : '-.4em';
  const copy = (cls: string, cut = '') =>
    h('span', { class: cls, lang: 'ar', style: at + cut }, s.word.text);
  return h(
    'span',
    {
      class: 'slice',
      style: `width:${b.right - b.left + 2 * PAD}px;height:${box.height}px`,
      'aria-hidden': 'true',
    },
    copy('slice-word'),
    copy(
      'slice-word ink',
      `;clip-path:inset(${top} ${box.right - b.right}px ${bottom} ${b.left - box.left}px)`,
    ),
  );
}
type Shown = NonNullable<ReturnType<Sheet['word']>>;

export function zoom(p: ZoomProps): Zoom {
  const word = p.verses[p.v]!.words[p.w]!,
    sheet = new Sheet();
  const big = h(
    'span',
    { class: `w${lined([word], 0)}`, lang: 'ar', 'data-t': 'zoom-word' },
    word.text,
  );
  sheet.add(p.v, p.w, big, p.verses);
  const row = h('div', { class: 'zoom-letters', dir: 'rtl', 'data-t': 'zoom-letters' });
  const box = h(
    'dialog',
    { class: 'zoom', 'aria-label': p.label, 'data-t': 'zoom' },
    h('div', { class: 'zoom-word', dir: 'rtl' }, big),
    h('p', { class: 'quiet' }, t('zoom.hint')),
    row,
    h(
      'button',
      { class: 'main', 'data-t': 'zoom-close', onclick: () => box.close() },
      t('zoom.close'),
    ),
  );
  box.style.setProperty('--pencil', p.look.colour);
  box.addEventListener('close', () => {
    unpaint('zoom');
    box.remove();
    p.closed();
  });
  // The finger that held the word is lifted over the dialog: that click is not meant for it.
  let own = false;
  box.addEventListener(
    'pointerdown',
    () => {
      own = true;
    },
    true,
  );
  box.addEventListener(
    'click',
    (e) => {
      if (!own && e.detail > 0) {
        e.stopPropagation();
        e.preventDefault();
      }
    },
    true,
  );
  box.addEventListener('click', (e) => {
    const r = box.getBoundingClientRect();
    if (
      e.target === box &&
      (e.clientY < r.top || e.clientY > r.bottom || e.clientX < r.left || e.clientX > r.right)
    )
      box.close();
  });
  big.addEventListener('click', (e) => {
    const at = sheet.hit(e.clientX, e.clientY);
    if (at) p.choose(at.l);
  });
  document.body.append(box);
  box.showModal();

  const at = big.getBoundingClientRect(),
    s = sheet.word(p.v, p.w)!;
  const faces = word.letters.map((_, l) => face(s, l, at)); // before the dialog grows and moves
  word.letters.forEach((x, l) =>
    row.append(
      h(
        'button',
        {
          class: 'zoom-letter',
          'data-t': `zoom-letter-${l}`,
          'aria-label': spoken(x),
          onclick: () => p.choose(l),
        },
        faces[l]!,
        h(
          'span',
          {
            class: 'zoom-name',
            'aria-hidden': 'true',
            lang: document.documentElement.lang,
            dir: 'auto',
          },
          letterName(x),
        ),
      ),
    ),
  );
  row.addEventListener('keydown', (e) => {
    const by = e.key === 'ArrowLeft' ? 1 : e.key === 'ArrowRight' ? -1 : 0,
      all = [...row.children] as HTMLElement[];
    if (by) all[all.indexOf(document.activeElement as HTMLElement) + by]?.focus();
  });
  (row.firstElementChild as HTMLElement | null)?.focus();

  const update = () => {
    const on = word.letters.map((_, l) => p.marked(l));
    on.forEach((pressed, l) => row.children[l]!.setAttribute('aria-pressed', String(pressed)));
    paint(
      sheet,
      box,
      on.flatMap((pressed, l) => (pressed ? [{ v: p.v, w: p.w, l, ...p.look }] : [])),
      'zoom',
    );
  };
  update();
  return { close: () => box.close(), update };
}
