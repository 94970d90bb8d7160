// The painter of the lines: colours letters by named highlight ranges over untouched text, and
// draws under each marked letter the shape of its kind (signs.ts), so that colour never stands
// alone. Where the browser has no such ranges, the whole word takes the colour. The text itself is
// never touched.
import { add, highlight, ranges, type Ranges } from './highlights.ts';
import { bits, whole } from './pieces.ts';
import { Sheet, type Shown } from './sheet.ts';
import { type Inked, inked, type Span } from '../marking/spans.ts';

/** The system's few colours are the reader's choice: there shapes alone tell marks apart. */
const forced = matchMedia('(forced-colors: active)');

/**
 * The styles of the colours reach only below an element that names them: each one makes laying the
 * words slower.
 */
function allow(el: HTMLElement, names: Iterable<string>) {
  const had = el.dataset.ink?.split(' ') ?? [];
  const more = [...names].filter((n) => !had.includes(n));
  if (more.length) el.dataset.ink = [...had, ...more].join(' ');
}

/** Draws a word's pieces if they differ from what it shows. */
function refresh(s: Shown, spans: Span[], { shapes, again }: Inked, coloured: boolean) {
  const key =
    spans.map((p) => `${p.l} ${p.name} ${p.under ?? ''} ${p.key ?? ''}`).join() +
    (spans.length && !coloured ? 'plain' : '');
  if (key === (s.key ?? '')) return;
  s.key = key;
  s.bits?.remove();
  delete s.bits;
  whole(s.el, spans);
  if (!spans.length) return;
  const edge = s.el.getBoundingClientRect().width / Sheet.em(s);
  s.bits = bits(s.word, shapes, coloured ? again : [], {
    edge,
    slot: (l) => Sheet.slot(s, l),
    crown: (l) => Sheet.crown(s, l),
    top: (l) => Sheet.top(s, l),
  });
  s.el.append(s.bits);
}

function rangeOf(node: Text, { from, to }: { from: number; to: number }): Range {
  const r = new Range();
  r.setStart(node, from);
  r.setEnd(node, to);
  return r;
}

/**
 * Paints the spans and nothing else on the words of a sheet, which are below root; owner tells
 * sheets apart.
 */
export function paint(sheet: Sheet, root: HTMLElement, spans: Span[], owner = 'lines') {
  const byWord = new Map<Shown, Span[]>();
  const byName: Ranges = new Map();
  const coloured = ranges && !forced.matches;
  for (const p of spans) {
    const s = sheet.word(p.v, p.w);
    const own = s && byWord.get(s);
    if (own) own.push(p);
    else if (s) byWord.set(s, [p]);
  }
  for (const s of sheet.shown) {
    const own = byWord.get(s) ?? [];
    const ink = inked(s.word, own);
    refresh(s, own, ink, coloured);
    if (coloured) for (const r of ink.ranges) add(byName, r.name, rangeOf(s.node, r));
  }
  allow(root, byName.keys());
  highlight(owner, byName);
}

/** Takes a sheet's colours away, as when it is left. */
export const unpaint = (owner = 'lines') => highlight(owner, new Map());
