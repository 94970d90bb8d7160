// Holds the pages: scaled on screen to the room there is, in full size for print, and tells the
// browser the paper's size.
import { h } from '../../dom.ts';
import type { Options } from '../../print/options.ts';
import { geometry, page } from '../../print/paper.ts';

export class Stage {
  readonly el = h('div', { class: 'print-stage' });
  private readonly leaves = h('div', { class: 'leaves' });
  private readonly paper = new CSSStyleSheet();
  private readonly watch = new ResizeObserver(() => this.fit());
  private wide = 0;

  constructor() {
    this.el.append(this.leaves);
    this.watch.observe(this.el);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, this.paper];
  }

  /** Runs make with an empty place of the paper's measures, on the page but out of sight. */
  async measured(
    o: Options,
    make: (box: HTMLElement) => HTMLElement[] | Promise<HTMLElement[]>,
  ): Promise<HTMLElement[]> {
    const box = h('div', { class: 'leaves print-measure', 'aria-hidden': 'true' });
    measures(box, o);
    document.body.append(box);
    try {
      return await make(box);
    } finally {
      box.remove();
    }
  }

  show(o: Options, leaves: HTMLElement[]) {
    const [w, high] = page(o.paper, o.turn);
    this.paper.replaceSync(`@page{size:${w}mm ${high}mm;margin:0}`);
    this.wide = geometry(o.paper, o.turn, o.size).wide;
    measures(this.leaves, o);
    this.leaves.classList.toggle('many', leaves.length > 12); // those out of sight are not drawn
    this.leaves.replaceChildren(...leaves);
    this.fit();
  }

  clear() {
    this.leaves.replaceChildren();
  }

  leave() {
    this.watch.disconnect();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((x) => x !== this.paper);
  }

  private fit() {
    if (this.wide)
      this.leaves.style.setProperty(
        '--zoom',
        String(Math.min(1, Math.floor((this.el.clientWidth / this.wide) * 1000) / 1000)),
      );
  }
}

function measures(el: HTMLElement, o: Options) {
  const g = geometry(o.paper, o.turn, o.size),
    [w, high] = page(o.paper, o.turn);
  for (const [k, v] of Object.entries({
    '--wide': `${w}mm`,
    '--high': `${high}mm`,
    '--em': `${g.em}px`,
    '--pitch': `${g.pitch}px`,
  }))
    el.style.setProperty(k, v);
  el.dataset.turn = o.turn;
}
