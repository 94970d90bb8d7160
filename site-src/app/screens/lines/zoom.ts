// A held word opens large, every letter a target of its own of at least 44 px. Each target shows
// its slice of the whole word, so that the joined forms stay as they are in the line.
import { html, nothing, render, type TemplateResult } from 'lit-html';
import { t } from '../../i18n.ts';
import { paint, unpaint } from '../../painting/paint.ts';
import { Sheet, type Shown } from '../../painting/sheet.ts';
import type { Look } from '../../marking/spans.ts';
import { standsOver } from '../../text/letters.ts';
import { lined } from '../../text/lined.ts';
import { letterName } from '../../text/names.ts';
import type { Letter, Verse, Word } from '../../types.ts';

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
  /** A letter with how it is marked, for a screen reader. */
  said: (l: number) => string;
  /** Whether a letter is marked; undefined where a press does not mark. */
  marked: (l: number) => boolean | undefined;
  choose: (l: number) => void;
  closed: () => void;
}

/** Pixels of the neighbours that are seen, faint, at either side of a letter. */
const PAD = 10;

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
  const onWord = (e: MouseEvent) => {
    const at = sheet.hit(e.clientX, e.clientY);
    if (at) p.choose(at.l);
  };
  const draw = () =>
    render(
      inside(p, word, faces, onWord, () => box.close()),
      box,
    );

  draw();
  sheet.add(p.v, p.w, box.querySelector<HTMLElement>('.w')!, p.verses);
  box.addEventListener('close', () => {
    unpaint('zoom');
    box.remove();
    p.closed();
  });
  closeOutside(box);
  document.body.append(box);
  box.showModal();

  const shown = sheet.word(p.v, p.w)!;
  const at = shown.el.getBoundingClientRect();
  faces = word.letters.map((_, l) => face(shown, l, at)); // before the dialog grows and moves
  const update = () => {
    draw();
    const on = word.letters.flatMap((_, l) =>
      p.marked(l) ? [{ v: p.v, w: p.w, l, ...p.look }] : [],
    );
    paint(sheet, box, on, 'zoom');
  };
  update();
  box.querySelector<HTMLElement>('.zoom-letter')?.focus();
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
  <p class="quiet">${t('zoom.hint')}</p>
  <div class="zoom-letters" dir="rtl" data-t="zoom-letters" @keydown=${alongRow}>
    ${faces.map((f, l) => target(p, word.letters[l]!, l, f))}
  </div>
  <button class="main" data-t="zoom-close" @click=${close}>${t('zoom.close')}</button>
`;

/** A letter to press. */
const target = (p: ZoomProps, x: Letter, l: number, slice: TemplateResult) => html`
  <button
    class="zoom-letter"
    data-t="zoom-letter-${l}"
    aria-label=${p.said(l)}
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

/**
 * One slice: the word again, faint, moved so that letter l is in the middle, and over it a copy cut
 * to that letter, in ink or, when it is marked, in the pencil's colour.
 */
function face(s: Shown, l: number, box: DOMRect): TemplateResult {
  const b = Sheet.box(s, l);
  const inside = (up: number) => `${Sheet.base(s) - up * Sheet.em(s) - box.top}px`;
  const top = standsOver(s.word, l + 1) ? inside(Sheet.crown(s, l + 1)) : '-.4em';
  const bottom = standsOver(s.word, l) ? `calc(100% - ${inside(Sheet.crown(s, l))})` : '-.4em';
  const at = `left:${box.left - b.left + PAD}px;width:${box.width}px`;
  const cut = `clip-path:inset(${top} ${box.right - b.right}px ${bottom} ${b.left - box.left}px)`;
  const size = `width:${b.right - b.left + 2 * PAD}px;height:${box.height}px`;
  const { text } = s.word;
  return html`<span class="slice" .style=${size} aria-hidden="true"
    ><span class="slice-word" lang="ar" .style=${at} .textContent=${text}></span
    ><span class="slice-word ink" lang="ar" .style=${`${at};${cut}`} .textContent=${text}></span
  ></span>`;
}

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
