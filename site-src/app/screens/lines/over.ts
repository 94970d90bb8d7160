// What lies over the lines: counts at letters, the place of the keyboard, the letter asked about.
import { html, render } from 'lit-html';
import { pencilOf } from '../../marking/pencils.ts';
import { Sheet } from '../../painting/sheet.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import { countedMarks, keepsBack, results } from '../../practice/steps.ts';
import * as state from '../../state.ts';
import { counts } from '../../text/counts.ts';
import type { Place } from '../../types.ts';

interface Box {
  at: Place;
  cls: 'count' | 'caret' | 'asked' | 'stroke' | 'stroke off';
  words?: string;
}

/** Puts everything in its place. It measures only where something lies over the lines. */
export function drawOver(p: Practice, sheet: Sheet, layer: HTMLElement) {
  const boxes = [...countsOf(p), ...caretOf(p, sheet), ...askedOf(p), ...strokeOf(p)];
  const origin = boxes.length ? layer.getBoundingClientRect() : undefined;
  render(
    boxes.map((b) => {
      const word = sheet.word(b.at.v, b.at.w);
      if (!word || !origin) return undefined;
      const r = Sheet.box(word, b.at.l);
      const style = [
        `left:${r.left - origin.left}px`,
        `top:${r.top - origin.top}px`,
        `width:${r.right - r.left}px`,
        `height:${r.bottom - r.top}px`,
      ].join(';');
      return html`<span class=${b.cls} .style=${style}>${b.words}</span>`;
    }),
    layer,
  );
}

/** The counts that the child wrote, or the right ones once they are told. */
function countsOf(p: Practice): Box[] {
  const { phase } = p.draft;
  const { settings, catalogue } = state.get();
  const ids = new Set(p.pencils.map((x) => x.id));
  if (phase === 'find' && !p.answer)
    return countedMarks(p.draft)
      .filter((m) => m.count && ids.has(pencilOf(m, p.draft.lines)))
      .map((m) => ({ at: m, cls: 'count', words: String(m.count) }));
  if (!(p.answer || phase === 'check') || settings.counting === 'never') return [];
  const hits = results(p).flatMap((r) => [...r.found, ...(keepsBack(p) ? [] : r.missed)]);
  return hits.flatMap(({ v, e }): Box[] => {
    const n = counts(catalogue.rules[e.rule]!, e, settings).want;
    return n ? [{ at: { v, w: e.w, l: e.l }, cls: 'count', words: String(n) }] : [];
  });
}

/** The place of the keyboard; for a finger, the letter that a count would be written at. */
function caretOf(p: Practice, sheet: Sheet): Box[] {
  const at = p.caret;
  if (!at) return [];
  const keyed = sheet.word(at.v, at.w)?.el.matches(':focus-visible');
  const counted = p.draft.phase === 'find' && !p.answer && practice.counting(p).how === 'each';
  return keyed || (counted && practice.marked(p, at)) ? [{ at, cls: 'caret' }] : [];
}

const askedOf = (p: Practice): Box[] => (p.explained ? [{ at: p.explained, cls: 'asked' }] : []);

/** The letters of a stroke: a band over those it will mark, a broken one over those it will not. */
const strokeOf = ({ stroke }: Practice): Box[] =>
  stroke?.letters.map((at) => ({ at, cls: stroke.on ? 'stroke' : 'stroke off' })) ?? [];
