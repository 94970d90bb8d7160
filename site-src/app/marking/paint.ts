// Colours letters by named highlight ranges over untouched text, and draws under each marked letter the shape of its kind
// (signs.ts), so that colour never stands alone. Where the browser has no such ranges, the whole word takes the colour.
//
// A range cannot colour everything alone. A small alif that stands over its letter is painted with it as one; lam and alif
// in their joined form are one shape, of which engines paint now the one half, now the other, now both. There the letter is
// drawn once more, in its colour, exactly over itself: a copy of the word cut to where only it stands (pieces.ts). The
// text itself is never touched.
import { cluster, lamAlif, stands } from '../text/letters.ts';
import type { Place, Word } from '../types.ts';
import { copy, drawing, hook, type Slot, type Stroke } from './pieces.ts';
import { Sheet, type Shown } from './sheet.ts';
import type { Sign } from './signs.ts';

/** The colour and shape of a mark; name is that of its highlight, colour a CSS colour. */
export interface Look { name: string; colour: string; sign: Sign }

/** A letter of a word and how it is marked. */
export interface Span extends Look, Place {}

export const ranges = typeof Highlight !== 'undefined' && !!CSS.highlights;

/** The system's few colours are the reader's choice: there shapes alone tell marks apart. */
const forced = matchMedia('(forced-colors: active)');

/** Not seen itself: both halves of a lam-alif that differ are drawn over it. */
const HOLLOW = 'hollow';

// The ranges in use: name, then the sheet they belong to. Names belong to the whole page, and an enlarged word or a second
// worked example must not clear the colours of the lines.
const inUse = new Map<string, Map<string, Range[]>>();

/** How each letter of a word is marked. */
export type Looks = (l: number) => Look | undefined;

/**
 * Where the letters of a word stand, in em: edge is how far right of the hook its right edge is; crown and top are as in
 * Sheet. Without top nothing is drawn above a small letter: its shape stands below the one that bears it, unless that has
 * its own.
 */
export interface Measure { edge: number; slot: (l: number) => Slot; crown: (l: number) => number; top?: (l: number) => number }

/** The ranges of a word's marks, in UTF-16 units, by the name of their highlight. */
export function marked(word: Word, look: Looks, put: (name: string, range: { from: number; to: number }) => void) {
  word.letters.forEach((_, l) => {
    const mine = look(l), alif = lamAlif(word, l - 1), lam = lamAlif(word, l);
    if (alif) return; // with its lam
    if (!lam) { if (mine && !stands(word, l)) put(mine.name, cluster(word, l, 1)); return; }
    const other = look(l + 1);
    if (mine || other) put(mine?.colour === other?.colour ? mine!.name : HOLLOW, cluster(word, l, 2));
  });
}

/**
 * What is drawn on a word's baseline: shapes and copies, with ranges of what they cannot colour alone, without ranges of no
 * letter, or of every letter that has a colour.
 */
export function bits(word: Word, look: Looks, m: Measure, copies: 'special' | 'none' | 'all'): HTMLElement {
  const base = hook(), strokes: Stroke[] = [];
  const again = (l: number, colour = 'var(--ink)') => base.append(copy(word.text, {
    slot: m.slot(l), colour, ...stands(word, l) ? { below: m.crown(l) + .02 } : {},
  }, m.edge));
  word.letters.forEach((_, l) => {
    const mine = look(l), before = look(l - 1), after = look(l + 1), over = stands(word, l);
    if (mine && !(over && before && !m.top)) strokes.push({ slot: m.slot(l), ...mine, ...over && m.top ? { over: m.top(l) } : {} });
    if (copies === 'none') return;
    // A small letter over another goes with it; where the two differ it is drawn again.
    if (over && mine?.colour !== before?.colour) again(l, mine?.colour);
    if (copies === 'all' && mine && !over) again(l, mine.colour);
    else if (lamAlif(word, l) && mine?.colour !== after?.colour) { again(l, mine?.colour); again(l + 1, after?.colour); }
  });
  if (strokes.length) base.append(drawing(strokes, m.edge));
  return base;
}

/** The styles of the colours reach only below an element that names them: each one makes laying the words slower. */
function allow(el: HTMLElement, names: Iterable<string>) {
  const had = el.dataset.ink?.split(' ') ?? [], more = [...names].filter((n) => !had.includes(n));
  if (more.length) el.dataset.ink = [...had, ...more].join(' ');
}

/** Draws a word's pieces if they differ from what it shows. */
function refresh(s: Shown, spans: Span[], coloured: boolean) {
  const key = spans.map((p) => `${p.l} ${p.name}`).join() + (spans.length && !coloured ? 'plain' : '');
  if (key === (s.key ?? '')) return;
  s.key = key;
  const edge = s.el.getBoundingClientRect().width / Sheet.em(s);
  const measure: Measure = { edge, slot: (l) => Sheet.slot(s, l), crown: (l) => Sheet.crown(s, l), top: (l) => Sheet.top(s, l) };
  const now = spans.length ? bits(s.word, looks(spans), measure, coloured && ranges ? 'special' : 'none') : undefined;
  s.bits?.remove();
  if (now) s.el.append(now);
  if (now) s.bits = now; else delete s.bits;
  if (ranges) return;
  s.el.classList.toggle('whole', spans.length > 0);
  if (spans[0]) s.el.style.setProperty('--whole', spans[0].colour);
}

function rangeOf(node: Text, { from, to }: { from: number; to: number }): Range {
  const r = new Range();
  r.setStart(node, from);
  r.setEnd(node, to);
  return r;
}

const looks = (spans: Span[]): Looks => (l) => spans.find((p) => p.l === l);

/** Paints the spans and nothing else on the words of a sheet, which are below root; owner tells sheets apart. */
export function paint(sheet: Sheet, root: HTMLElement, spans: Span[], owner = 'lines') {
  const byWord = new Map<Shown, Span[]>(), byName = new Map<string, Range[]>(), coloured = !forced.matches;
  for (const p of spans) {
    const s = sheet.word(p.v, p.w);
    if (!s) continue;
    const own = byWord.get(s);
    if (own) own.push(p); else byWord.set(s, [p]);
  }
  for (const s of sheet.shown) refresh(s, byWord.get(s) ?? [], coloured);
  if (!ranges) return;
  if (coloured) {
    for (const [s, own] of byWord) {
      marked(s.word, looks(own), (name, at) => {
        const all = byName.get(name), r = rangeOf(s.node, at);
        if (all) all.push(r); else byName.set(name, [r]);
      });
    }
  }
  allow(root, byName.keys());
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
