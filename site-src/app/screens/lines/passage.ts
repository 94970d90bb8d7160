// The lines themselves: every verse, its words, the places where one may stop, and the layer for
// what lies over them.
import * as state from '../../state.ts';
import { h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { paint } from '../../marking/paint.ts';
import { Sheet } from '../../marking/sheet.ts';
import { counts } from '../../text/counts.ts';
import { opens } from '../../text/data.ts';
import { lined } from '../../text/lined.ts';
import { linesName, letterAt, spoken } from '../../text/names.ts';
import { watch } from '../../marking/gesture.ts';
import * as live from './live.ts';
import { openWord } from './word.ts';
import { spans } from './spans.ts';
import { keys } from './keys.ts';

const digits = new Intl.NumberFormat('ar-u-nu-arab', { useGrouping: false });

interface Ends {
  v: number;
  w: number;
  el: HTMLElement;
  end: boolean;
}
export interface Passage {
  el: HTMLElement;
  sheet: Sheet;
  update: () => void;
}

/** Lays the lines; basmala is what is read before a surah's first verse. */
export function passage(l: live.Live, basmala: string): Passage {
  const sheet = new Sheet(),
    layer = h('div', { class: 'layer', 'aria-hidden': 'true' });
  const text = h('div', { class: 'text', lang: 'ar', dir: 'rtl' }),
    buttons: Ends[] = [];
  const now = live.stops(l);
  l.verses.forEach((verse, v) => {
    const p = h('span', {
      class: 'verse',
      'data-t': `verse-${verse.s}-${verse.a}`,
      'data-ref': `${verse.s}:${verse.a}`,
    });
    if (l.draft.lines.from.s !== l.draft.lines.to.s && (verse.a === 1 || v === 0))
      text.append(h('span', { class: 'surah' }, state.get().catalogue.surahs[verse.s - 1]!.ar));
    if (basmala && verse.a === 1 && opens(verse.s))
      text.append(h('span', { class: 'basmala', 'data-t': 'basmala' }, basmala));
    let run: HTMLElement | undefined; // the words under one line of a prostration
    verse.words.forEach((word, w) => {
      if (!word.lined) run = undefined;
      if (w) (run ?? p).append(' ');
      if (word.lined && !run)
        p.append((run = h('span', { role: 'group', 'aria-label': t('lines.lined') })));
      const el = h(
        'span',
        {
          class: `w${lined(verse.words, w)}`,
          role: 'button',
          tabindex: '-1',
          'data-v': v,
          'data-w': w,
        },
        word.text,
      );
      sheet.add(v, w, el, l.verses);
      const into = run ?? p;
      const last = w === verse.words.length - 1,
        end = last && !verse.open;
      if (!last && !now.movable(v, w)) {
        into.append(el);
        return;
      }
      const b = h(
        'button',
        {
          class: end ? 'stop end' : 'stop',
          disabled: !now.movable(v, w),
          'data-t': `stop-${verse.s}-${verse.a}-${w}`,
          onclick: () => live.moveStop(v, w),
        },
        end ? digits.format(verse.a) : '',
      );
      // a line must not begin with the sign of the line before
      into.append(h('span', { class: 'with-stop' }, el, b));
      buttons.push({ v, w, el: b, end });
    });
    text.append(p, ' ');
  });
  const { from, to } = l.draft.lines;
  const el = h(
    'div',
    {
      class: 'sheet',
      'data-ink': l.rule && `f-${l.rule.family}`,
      role: 'application',
      tabindex: '0',
      'data-t': 'passage',
      'aria-describedby': 'keys-help',
      'aria-label': linesName(state.get().catalogue.surahs, from, to),
    },
    text,
    h('div', { class: 'glass', 'aria-hidden': 'true' }),
    layer,
  );
  let adding = true;
  watch(el, sheet, {
    tap: (p) => act(p),
    hold: (v, w) => live.set({ open: { v, w } }),
    stroke: (p, first) => {
      const x = live.get();
      if (!x || x.draft.phase !== 'find' || x.ask) return;
      if (first) adding = !live.marked(x, p);
      live.mark(p, adding, first);
    },
  });
  let laid = '',
    stops: unknown;
  const update = () => {
    const x = live.get();
    if (x && stops !== x.draft.stops) {
      stops = x.draft.stops;
      press(x, buttons);
    }
    draw(sheet, el, layer);
  };
  // Letters move when the lines are laid anew: by a turned phone, a setting, or the font that has
  // come.
  keys(el, sheet, update);
  new ResizeObserver(([e]) => {
    const size = `${e!.contentRect.width} ${e!.contentRect.height}`;
    if (laid && laid !== size) update();
    laid = size;
  }).observe(el);
  sheet.whenFont(text.textContent, update);
  return { el, sheet, update };
}

/** What choosing a letter does: marks it while finding, else tells how it is read. */
export function act(p: NonNullable<live.Live['caret']>) {
  const x = live.get();
  if (!x) return;
  if (x.draft.phase === 'find' && !x.ask) live.mark(p, !live.marked(x, p));
  else live.set({ explained: p, caret: p });
}

/** Says on each stop whether it is one now. */
function press(l: live.Live, buttons: Ends[]) {
  const now = live.stops(l);
  for (const b of buttons) {
    const stop = now.after(b.v, b.w),
      a = l.verses[b.v]!.a;
    b.el.setAttribute('aria-pressed', String(stop));
    b.el.setAttribute(
      'aria-label',
      t(b.end ? 'stop.end' : 'stop.sign', { a, what: t(stop ? 'stop.stops' : 'stop.reads-on') }),
    );
    b.el.title = t(stop ? 'stop.stops' : 'stop.reads-on');
  }
}

function draw(sheet: Sheet, root: HTMLElement, layer: HTMLElement) {
  const l = live.get();
  if (!l || !layer.isConnected) return;
  paint(sheet, root, spans(l));
  layer.replaceChildren();
  // asked for only when something lies over the lines: it makes the browser lay them out now
  let at: DOMRect | undefined;
  const place = (v: number, w: number, i: number, cls: string, words = '') => {
    const s = sheet.word(v, w);
    if (!s) return;
    const b = Sheet.box(s, i),
      origin = (at ??= layer.getBoundingClientRect());
    layer.append(
      h(
        'span',
        {
          class: cls,
          style: `left:${b.left - origin.left}px;top:${b.top - origin.top}px;width:${b.right - b.left}px;height:${b.bottom - b.top}px`,
        },
        words,
      ),
    );
  };
  if (l.draft.phase === 'find' && !l.answer)
    for (const m of l.draft.marks) if (m.count) place(m.v, m.w, m.l, 'count', String(m.count));
  if (l.rule && (l.answer || l.draft.phase === 'check')) {
    const s = state.get().settings,
      r = live.result(l);
    for (const x of [...r.found, ...r.missed]) {
      const n = counts(l.rule, x.e, s).want;
      if (n) place(x.v, x.e.w, x.e.l, 'count', String(n));
    }
  }
  // The place of the keyboard; for a finger, the letter that a count would be written at.
  const keyed = l.caret && sheet.word(l.caret.v, l.caret.w)?.el.matches(':focus-visible');
  if (
    l.caret &&
    (keyed ||
      (l.draft.phase === 'find' && !l.answer && l.rule?.counts.length && live.marked(l, l.caret)))
  ) {
    place(l.caret.v, l.caret.w, l.caret.l, 'caret');
  }
  if (l.explained) place(l.explained.v, l.explained.w, l.explained.l, 'asked');
  openWord(l);
}

/** What a screen reader says of the letter the keyboard stands on. */
export function say(l: live.Live, p: NonNullable<live.Live['caret']>): string {
  const m = live.marked(l, p),
    word = l.verses[p.v]!.words[p.w]!;
  return (
    t(m ? 'say.marked' : 'say.letter', {
      letter: spoken(letterAt(l.verses, p)),
      i: p.l + 1,
      n: word.letters.length,
    }) + (m?.count ? ` ${t('say.count', { n: m.count })}` : '')
  );
}
