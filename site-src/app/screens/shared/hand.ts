// A pen, a mouse or a finger on the shared screen: a short press, a press held, or a stroke. Two
// fingers are the browser's: they scroll and enlarge. While a pen is near, fingers draw nothing,
// because a hand rests beside it.
import { pathOf, type Point } from '../../marking/snap.ts';

export interface Acts {
  /** Something is pressed, or let go: what is open beside it closes. */
  down: () => void;
  press: (x: number, y: number) => void;
  hold: (x: number, y: number) => void;
  /** A stroke by points of the sheet. */
  stroke: (points: Point[]) => void;
  /** A screen reader's own press on a word, which comes as a click without a pointer. */
  read: (word: HTMLElement) => void;
}

/** How long (ms) a letter is held. */
const HOLD = 450;

/** Pixels that a resting hand moves. */
const SLOP = 8;

/** Pixels between the points of a stroke that are kept. */
const STEP = 1.5;

/** How long (ms) after a pen was seen a finger that comes may be the hand that holds it. */
const NEAR = 500;

/** How long (ms) after a press a click still belongs to it. */
const OWN_CLICK = 1000;

const onButton = (e: Event) => !!(e.target as Element).closest('button');

/** Follows one pointer at a time. */
class Hand {
  private id = -1;
  private kind = '';
  private origin: Point = { x: 0, y: 0 };
  private from: Point = { x: 0, y: 0 };
  private points: Point[] = [];
  private moving = false;
  private timer = 0;
  private frame = 0;
  private lifted = -Infinity;
  private pen = -Infinity;
  private readonly fingers = new Set<number>();
  private readonly live: SVGElement;
  private readonly pointer: SVGElement;

  constructor(
    private readonly el: HTMLElement,
    private readonly on: Acts,
  ) {
    this.live = el.querySelector('.live')!;
    this.pointer = el.querySelector('.pointer')!;
  }

  readonly down = (e: PointerEvent) => {
    if (e.button !== 0 || onButton(e)) return;
    this.on.down();
    if (e.pointerType === 'touch' && !(this.el.contains(e.target as Node) && this.mayTouch(e)))
      return;
    if (e.pointerType === 'pen' && this.kind === 'touch') this.drop();
    if (this.id >= 0) return;
    const r = this.el.getBoundingClientRect();
    this.origin = { x: r.left + scrollX, y: r.top + scrollY };
    this.id = e.pointerId;
    this.kind = e.pointerType;
    this.from = { x: e.clientX, y: e.clientY };
    this.points = [this.local(e)];
    this.moving = false;
    this.timer = window.setTimeout(this.held, HOLD);
    this.el.setPointerCapture(e.pointerId);
    this.show();
  };

  /** Whether a finger draws: it is alone, and no pen is near. */
  private mayTouch(e: PointerEvent): boolean {
    this.fingers.add(e.pointerId);
    if (this.fingers.size > 1 && this.kind === 'touch') this.drop();
    const byPen = this.kind === 'pen' || e.timeStamp - this.pen < NEAR;
    return this.fingers.size === 1 && !byPen;
  }

  private local = (e: PointerEvent): Point => ({
    x: e.clientX + scrollX - this.origin.x,
    y: e.clientY + scrollY - this.origin.y,
  });

  private readonly held = () => {
    const { x, y } = this.from;
    this.drop();
    this.lifted = performance.now();
    this.on.hold(x, y);
  };

  readonly move = (e: PointerEvent) => {
    if (e.pointerType === 'pen') this.pen = e.timeStamp;
    if (e.pointerId !== this.id) return;
    const all = e.getCoalescedEvents?.() ?? [];
    for (const x of all.length ? all : [e]) this.add(this.local(x));
    const far = Math.hypot(e.clientX - this.from.x, e.clientY - this.from.y);
    if (far > SLOP && !this.moving) {
      this.moving = true;
      clearTimeout(this.timer);
    }
    this.frame ||= requestAnimationFrame(this.show);
  };

  private add(p: Point) {
    const last = this.points.at(-1)!;
    if (Math.hypot(p.x - last.x, p.y - last.y) >= STEP) this.points.push(p);
  }

  /** The stroke as it grows, and a ring around the pointer, which a call may not show. */
  private readonly show = () => {
    this.frame = 0;
    const at = this.points.at(-1)!;
    this.pointer.setAttribute('cx', String(at.x));
    this.pointer.setAttribute('cy', String(at.y));
    this.pointer.classList.add('on');
    if (this.moving) this.live.setAttribute('d', pathOf(this.points));
  };

  readonly up = (e: PointerEvent) => {
    this.fingers.delete(e.pointerId);
    if (e.pointerType === 'pen') this.pen = e.timeStamp;
    if (e.pointerId !== this.id) return;
    const { moving, points, from } = this;
    if (moving) this.add(this.local(e));
    this.drop();
    this.lifted = e.timeStamp;
    if (moving) this.on.stroke(points);
    else this.on.press(from.x, from.y);
  };

  readonly cancel = (e: PointerEvent) => {
    this.fingers.delete(e.pointerId);
    if (e.pointerId === this.id) this.drop();
  };

  /** Forgets the pointer and what it has drawn so far. */
  private drop() {
    clearTimeout(this.timer);
    cancelAnimationFrame(this.frame);
    this.frame = 0;
    this.id = -1;
    this.kind = '';
    this.live.setAttribute('d', '');
    this.pointer.classList.remove('on');
  }

  readonly click = (e: MouseEvent) => {
    if (e.detail !== 0 || e.timeStamp - this.lifted <= OWN_CLICK || onButton(e)) return;
    const word = (e.target as Element).closest<HTMLElement>('.w');
    if (word) this.on.read(word);
  };
}

/** Listens on the sheet, and on the margins around it, where a finger scrolls. */
export function watch(el: HTMLElement, on: Acts) {
  const hand = new Hand(el, on);
  const all = el.parentElement!;
  all.addEventListener('pointerdown', hand.down);
  all.addEventListener('pointermove', hand.move);
  all.addEventListener('pointerup', hand.up);
  all.addEventListener('pointercancel', hand.cancel); // two fingers scroll the page
  el.addEventListener('click', hand.click);
  // The text can be selected, because WebKit colours none that cannot.
  all.addEventListener('selectstart', (e) => e.preventDefault());
  all.addEventListener('contextmenu', (e) => {
    if ((e as PointerEvent).pointerType !== 'mouse') e.preventDefault();
  });
}
