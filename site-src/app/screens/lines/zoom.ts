// A word opens large, every letter a target of its own of at least 44 px.
import { html, nothing, render, type TemplateResult } from 'lit-html';
import { t } from '../../i18n.ts';
import { hit, rival } from '../../painting/hit.ts';
import { paint, unpaint } from '../../painting/paint.ts';
import { Sheet } from '../../painting/sheet.ts';
import type { Look } from '../../marking/spans.ts';
import { lined } from '../../text/lined.ts';
import { letterName } from '../../text/names.ts';
import type { Letter, Verse, Word } from '../../types.ts';
import { margin } from './gesture.ts';
import { face } from './slice.ts';

export interface Zoom {
  close: () => void;
  /** Draws anew which letters are marked. */
  update: () => void;
}

export interface ZoomProps {
  verses: Verse[];
  v: number;
  w: number;
  look: Look;
  label: string;
  /** What to do, and why the word is open. */
  hint: string;
  /** The letters with how they are marked now, for a screen reader. */
  said: () => string[];
  /** Whether a letter is marked; undefined where a press does not mark. */
  marked: (l: number) => boolean | undefined;
  choose: (l: number) => void;
  closed: () => void;
}

/** Opens the word in a dialog over everything. */
export function zoom(p: ZoomProps): Zoom {
  const word = p.verses[p.v]!.words[p.w]!;
  const box = document.createElement('dialog');
  const sheet = new Sheet();
  let faces: TemplateResult[] = [];

  box.className = 'zoom';
  box.ariaLabel = p.label;
  box.dataset.t = 'zoom';
  box.style.setProperty('--pencil', p.look.colour);
  box.setAttribute('aria-describedby', 'zoom-hint');
  const onWord = (e: MouseEvent) => press(p, sheet, box, e);
  const draw = () =>
    render(
      inside(p, word, faces, onWord, () => box.close()),
      box,
    );

  draw();
  sheet.add(p.v, p.w, box.querySelector<HTMLElement>('.w')!, p.verses);
  box.addEventListener('close', () => {
    unpaint('zoom');
    removeEventListener('resize', grow);
    box.remove();
    p.closed();
  });
  closeOutside(box);
  document.body.append(box);
  box.showModal();

  const shown = sheet.word(p.v, p.w)!;
  const at = shown.el.getBoundingClientRect();
  faces = word.letters.map((_, l) => face(shown, l, at)); // before the dialog grows and moves
  const grow = () => fit(box);
  grow();
  addEventListener('resize', grow);
  const update = () => {
    draw();
    const on = word.letters.flatMap((_, l) =>
      p.marked(l) ? [{ v: p.v, w: p.w, l, ...p.look }] : [],
    );
    paint(sheet, box, on, 'zoom');
  };
  update();
  letterIn(box, 0)?.focus({ preventScroll: true });
  return { close: () => box.close(), update };
}

const inside = (
  p: ZoomProps,
  word: Word,
  faces: TemplateResult[],
  onWord: (e: MouseEvent) => void,
  close: () => void,
) => html`
  <div class="zoom-word" dir="rtl">
    <span
      class="w${lined([word], 0)}"
      lang="ar"
      data-t="zoom-word"
      .textContent=${word.text}
      @click=${onWord}
    ></span>
  </div>
  <p class="quiet" id="zoom-hint" data-t="zoom-hint">${p.hint}</p>
  <div class="zoom-letters" dir="rtl" data-t="zoom-letters" @keydown=${alongRow}>
    ${targets(p, word, faces)}
  </div>
  <button class="main" data-t="zoom-close" @click=${close}>${t('zoom.close')}</button>
`;

const letterIn = (box: Element, l: number) =>
  box.querySelector<HTMLElement>(`[data-t=zoom-letter-${l}]`);

/**
 * A touch of the word itself chooses its letter, or where that may have been meant for another goes
 * to the letter below.
 */
function press(p: ZoomProps, sheet: Sheet, box: Element, e: MouseEvent) {
  const { clientX: x, clientY: y } = e;
  const at = hit(sheet, x, y);
  if (!at) return;
  const near = margin((e as PointerEvent).pointerType ?? 'touch');
  if (rival(sheet, at, x, y, near) === Infinity) return p.choose(at.l);
  box.querySelector('.near')?.classList.remove('near');
  letterIn(box, at.l)?.classList.add('near');
  letterIn(box, at.l)?.focus();
}

/** The most of the screen's height that the word takes. */
const SHARE = 0.35;

/** Makes the word so small that it is seen whole; its letters below stay as large as they are. */
function fit(box: HTMLElement) {
  const hold = box.querySelector<HTMLElement>('.zoom-word')!;
  box.style.setProperty('--fit', '1');
  const word = hold.querySelector('.w')!.getBoundingClientRect();
  const size = Math.min(1, hold.clientWidth / word.width, (SHARE * innerHeight) / word.height);
  box.style.setProperty('--fit', String(size));
}

function targets(p: ZoomProps, word: Word, faces: TemplateResult[]) {
  const said = p.said();
  return faces.map((slice, l) => target(p, word.letters[l]!, l, slice, said[l]!));
}

/** A letter to press. */
const target = (p: ZoomProps, x: Letter, l: number, slice: TemplateResult, said: string) => html`
  <button
    class="zoom-letter"
    data-t="zoom-letter-${l}"
    aria-label=${said}
    aria-pressed=${p.marked(l) ?? nothing}
    @click=${() => p.choose(l)}
  >
    ${slice}<span
      class="zoom-name"
      aria-hidden="true"
      lang=${document.documentElement.lang}
      dir="auto"
      >${letterName(x)}</span
    >
  </button>
`;

/** Arrows lead from letter to letter. */
function alongRow(e: KeyboardEvent) {
  const by = e.key === 'ArrowLeft' ? 1 : e.key === 'ArrowRight' ? -1 : 0;
  const all = [...(e.currentTarget as Element).querySelectorAll<HTMLElement>('.zoom-letter')];
  if (by) all[all.indexOf(document.activeElement as HTMLElement) + by]?.focus();
}

/** A press beside the dialog closes it; the finger that held the word is lifted over it first. */
function closeOutside(box: HTMLDialogElement) {
  let own = false;
  const down = () => {
    own = true;
  };
  const stray = (e: MouseEvent) => {
    if (own || e.detail === 0) return;
    e.stopPropagation();
    e.preventDefault();
  };
  box.addEventListener('pointerdown', down, true);
  box.addEventListener('click', stray, true);
  box.addEventListener('click', (e) => {
    const r = box.getBoundingClientRect();
    const inside =
      e.clientY >= r.top && e.clientY <= r.bottom && e.clientX >= r.left && e.clientX <= r.right;
    if (e.target === box && !inside) box.close();
  });
}
