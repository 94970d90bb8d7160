// Colours letters by named highlight ranges over untouched text. Where the browser has no such ranges, the whole word
// takes the colour. A small alif that stands over its letter cannot be coloured by a range of its own (the browser
// paints a letter and what stands on it as one), so it is drawn once more, in its colour, exactly over itself: a copy
// of the word cut to the height where nothing else stands. Lam and alif in their joined form are one shape to the
// browser too, painted as the alif is: where the two differ, the lam's half is drawn once more in the same way. The text
// itself is never touched.
import { h } from '../dom.ts';
import { lamAlif, stands } from '../text/letters.ts';
import { Sheet, type Shown } from './sheet.ts';

/** n letters from l of a word in the highlight called name; colour is a CSS colour for what ranges cannot paint. */
export interface Span { v: number; w: number; l: number; n: number; name: string; colour: string }

// The ranges in use: name, then the sheet they belong to. Names belong to the whole page, and an enlarged word or a second
// worked example must not clear the colours of the lines.
const inUse = new Map<string, Map<string, Range[]>>();
export const ranges = typeof Highlight !== 'undefined' && !!CSS.highlights;

function copy(s: Shown, l: number, colour: string, origin: DOMRect): HTMLElement {
  const w = s.el.getBoundingClientRect(), b = Sheet.box(s, l), cut = stands(s.word, l) ? Sheet.split(s, l, b) - w.top : w.height;
  return h('span', {
    class: 'over', style: `left:${w.left - origin.left}px;top:${w.top - origin.top}px;width:${w.width}px;height:${w.height}px;color:${colour};`
      + `clip-path:inset(-.5em ${w.right - b.right - 1}px ${stands(s.word, l) ? `${w.height - cut}px` : '-.5em'} ${b.left - w.left - (stands(s.word, l) ? 1 : 0)}px)`,
  }, s.word.text);
}

/** A short line over the small letter, so that it is seen apart from the letter below also without colour. */
function roof(s: Shown, l: number, colour: string, origin: DOMRect): HTMLElement {
  const b = Sheet.box(s, l), wide = Math.max(14, (b.right - b.left) * .6);
  const top = Math.max(Sheet.crown(s, l, b) - 6, s.el.getBoundingClientRect().top);
  return h('span', {
    class: 'roof', style: `left:${(b.left + b.right) / 2 - wide / 2 - origin.left}px;top:${top - origin.top}px;width:${wide}px;background:${colour}`,
  });
}

/** The styles of the colours reach only below an element that names them: each one makes laying the words slower. */
function allow(el: HTMLElement | null, names: Set<string>) {
  const had = el?.dataset.ink?.split(' ') ?? [], more = [...names].filter((n) => !had.includes(n));
  if (el && more.length) el.dataset.ink = [...had, ...more].join(' ');
}

/** Paints the spans and nothing else on a sheet; extra pieces go into over, a layer that lies exactly on it. */
export function paint(sheet: Sheet, over: HTMLElement, spans: Span[], owner = 'lines') {
  let at: DOMRect | undefined;
  const origin = () => at ??= over.getBoundingClientRect(), byName = new Map<string, Range[]>(), pieces: HTMLElement[] = [];
  if (!ranges) for (const s of sheet.shown) s.el.classList.remove('whole');
  const colours = new Map(spans.flatMap((p) => Array.from({ length: p.n }, (_, i) => [`${p.v}.${p.w}.${p.l + i}`, p.colour] as const)));
  for (const p of spans) {
    const s = sheet.word(p.v, p.w);
    if (!s) continue;
    if (!ranges) {
      s.el.classList.add('whole');
      s.el.style.setProperty('--whole', p.colour);
      continue;
    }
    const alone = stands(s.word, p.l);
    if (alone) pieces.push(copy(s, p.l, p.colour, origin()), roof(s, p.l, p.colour, origin()));
    const r = alone && p.n === 1 ? undefined : Sheet.range(s, alone ? p.l + 1 : p.l, alone ? p.n - 1 : p.n);
    // A double line takes two highlights: engines draw both lines of one in the same place.
    if (r) for (const name of [p.name, `${p.name}-2`]) byName.set(name, [...byName.get(name) ?? [], r]);
    // The letter is coloured and the small alif over it is not: draw the alif in ink again.
    const next = p.l + p.n;
    if (stands(s.word, next) && !colours.has(`${p.v}.${p.w}.${next}`)) pieces.push(copy(s, next, 'var(--ink)', origin()));
  }
  for (const s of sheet.shown) {
    s.word.letters.forEach((_, l) => {
      if (!lamAlif(s.word, l)) return;
      const [lam, alif] = [l, l + 1].map((i) => colours.get(`${s.v}.${s.w}.${i}`) ?? 'var(--ink)');
      if (lam !== alif && lam) pieces.push(copy(s, l, lam, origin()));
    });
  }
  over.replaceChildren(...pieces);
  if (!ranges) return;
  allow(over.parentElement, new Set(spans.map((p) => p.name)));
  for (const name of byName.keys()) if (!inUse.has(name)) inUse.set(name, new Map());
  for (const [name, owners] of inUse) {
    const now = byName.get(name);
    if (!now && !owners.has(owner)) continue;
    if (now) owners.set(owner, now);
    else owners.delete(owner);
    const all = [...owners.values()].flat();
    if (all.length) CSS.highlights.set(name, new Highlight(...all));
    else CSS.highlights.delete(name);
  }
}

/** Takes a sheet's colours away, as when it is left. */
export const unpaint = (owner = 'lines') => { paint(new Sheet(), document.createElement('div'), [], owner); };
