// A finger, pen or mouse on the lines: a tap, a stroke along a word, or a word held for a moment.
import { hit, rival } from '../../painting/hit.ts';
import type { Sheet } from '../../painting/sheet.ts';
import type { Place } from '../../types.ts';

export interface Hands {
  /** crowded: another letter is so near that it may be the one that was meant. */
  tap: (at: Place, crowded: boolean) => void;
  /** The first letter of a stroke; false where none may begin. */
  begin: (at: Place) => boolean;
  /** Each letter that it passes. */
  pass: (at: Place) => void;
  /** Its end; false if it was a tap. */
  lift: () => boolean;
  /** The browser has taken the finger for something else. */
  drop: () => void;
  hold: (v: number, w: number) => void;
}

/** How long (ms) a word is held before it opens. */
const HOLD = 450;

/** Pixels that a resting finger moves. */
const SLOP = 8;

/** Pixels between the points of a stroke that are looked at. */
const STEP = 5;

/**
 * How near (px) to another letter a touch may be meant for that one: by a finger, and by a mouse or
 * a pen. TestFingers of e2e measures what comes of it.
 */
export const margin = (pointer: string) => (pointer === 'touch' ? 8 : 2.5);

/** How long (ms) after a touch a click still belongs to it. */
const OWN_CLICK = 1000;

const onButton = (e: Event) => !!(e.target as Element).closest('button');

/** Follows one pointer at a time. */
class Follower {
  private id = -1;
  private from = { x: 0, y: 0 };
  private x = 0;
  private y = 0;
  private timer = 0;
  private moving = false;
  private stroke = false;
  private lifted = -Infinity;

  constructor(
    private readonly el: HTMLElement,
    private readonly sheet: Sheet,
    private readonly on: Hands,
  ) {}

  readonly down = (e: PointerEvent) => {
    if (e.button !== 0 || this.id >= 0 || onButton(e)) return;
    this.id = e.pointerId;
    this.x = e.clientX;
    this.y = e.clientY;
    this.from = { x: this.x, y: this.y };
    this.moving = false;
    this.timer = window.setTimeout(this.held, HOLD);
  };

  private readonly held = () => {
    const at = hit(this.sheet, this.x, this.y);
    this.end();
    if (at) this.on.hold(at.v, at.w);
  };

  readonly move = (e: PointerEvent) => {
    if (e.pointerId !== this.id) return;
    const far = Math.hypot(e.clientX - this.x, e.clientY - this.y);
    if (!this.moving && (far < SLOP || !this.begin(e))) return;
    for (let i = 1, n = Math.ceil(far / STEP); i <= n; i++) {
      const x = this.x + ((e.clientX - this.x) * i) / n;
      const y = this.y + ((e.clientY - this.y) * i) / n;
      const at = this.stroke && hit(this.sheet, x, y);
      if (at) this.on.pass(at);
    }
    this.x = e.clientX;
    this.y = e.clientY;
  };

  /** Begins a stroke, unless the finger scrolls: up or down is the page's. */
  private begin(e: PointerEvent): boolean {
    clearTimeout(this.timer);
    const steep = Math.abs(e.clientY - this.y) > Math.abs(e.clientX - this.x);
    if (e.pointerType === 'touch' && steep) {
      this.end();
      return false;
    }
    this.moving = true;
    this.el.setPointerCapture(this.id);
    const at = hit(this.sheet, this.x, this.y);
    this.stroke = !!at && this.on.begin(at);
    return true;
  }

  readonly up = (e: PointerEvent) => {
    if (e.pointerId !== this.id) return;
    this.end();
    this.lifted = e.timeStamp;
    if (!this.moving) this.tap(e.clientX, e.clientY, e.pointerType);
    else if (this.stroke && !this.on.lift()) this.tap(this.from.x, this.from.y, e.pointerType);
  };

  private tap(x: number, y: number, pointer: string) {
    const at = hit(this.sheet, x, y);
    if (at) this.on.tap(at, rival(this.sheet, at, x, y, margin(pointer)) < Infinity);
  }

  readonly cancel = (e: PointerEvent) => {
    if (e.pointerId !== this.id) return;
    this.end();
    this.on.drop();
  };

  private readonly end = () => {
    clearTimeout(this.timer);
    this.id = -1;
  };

  /**
   * A screen reader's own tap comes as a click without a pointer: it opens the word, where every
   * letter is a control.
   */
  readonly click = (e: MouseEvent) => {
    if (e.detail !== 0 || e.timeStamp - this.lifted <= OWN_CLICK || onButton(e)) return;
    const word = (e.target as Element).closest<HTMLElement>('.w');
    const at = word
      ? { v: Number(word.dataset.v), w: Number(word.dataset.w) }
      : hit(this.sheet, e.clientX, e.clientY);
    if (at) this.on.hold(at.v, at.w);
  };
}

/** Listens on the lines. */
export function watch(el: HTMLElement, sheet: Sheet, on: Hands) {
  const f = new Follower(el, sheet, on);
  el.addEventListener('pointerdown', f.down);
  el.addEventListener('pointermove', f.move);
  el.addEventListener('pointerup', f.up);
  el.addEventListener('pointercancel', f.cancel); // the page scrolls
  el.addEventListener('click', f.click);
  // The text can be selected, because WebKit colours none that cannot: a stroke or a double tap
  // must not.
  el.addEventListener('selectstart', (e) => e.preventDefault());
  el.addEventListener('contextmenu', (e) => {
    if ((e as PointerEvent).pointerType !== 'mouse') e.preventDefault();
  });
}
