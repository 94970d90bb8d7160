// What a hand does on the sheet: rings, lines under words, strokes, and taking them away.
import { add, type Drawn, remove, ring, ringAt, under } from '../../marking/drawing.ts';
import { bind, distance, type Point, underlined } from '../../marking/snap.ts';
import { hit } from '../../painting/hit.ts';
import { type Board, draw, get, set } from './board.ts';
import type { Acts } from './hand.ts';
import { type Ground, runsOf } from './shapes.ts';

/** How near a press is to the line or stroke that it takes away: in pixels, and in em. */
const NEAR = 12;
const NEAR_EM = 0.15;

/** What is open beside a letter closes. */
function down() {
  const b = get();
  if (b?.numbers || b?.caret) set({ numbers: undefined, caret: undefined });
}

/** A ring that is pressed goes, and so does a line or a stroke; any other letter gets a ring. */
function press(b: Board, g: Ground, x: number, y: number) {
  const at = hit(g.sheet, x, y);
  const drawn = at && ringAt(b.drawing, at) ? undefined : near(b, g, x, y);
  if (drawn) draw((d) => remove(d, drawn));
  else if (at) draw((d) => ring(d, at));
}

/** The line or stroke that a press is on, the last on top. */
function near(b: Board, g: Ground, x: number, y: number): Drawn | undefined {
  const p = { x: x - g.origin.x, y: y - g.origin.y };
  const least = Math.max(NEAR, NEAR_EM * (g.spots[0]?.em ?? 0));
  return b.drawing.drawn.findLast(
    (d) => d.kind !== 'ring' && runsOf(g, d).some((run) => distance(run, p) <= least),
  );
}

/** A letter that is held has a ring, and numbers to choose from beside it. */
function hold(g: Ground, x: number, y: number) {
  const at = hit(g.sheet, x, y);
  if (at) draw((d) => (ringAt(d, at) ? d : ring(d, at)), { numbers: at });
}

/** A stroke along the foot of words is a line under them; any other stays as it was drawn. */
function stroke({ spots }: Ground, points: Point[]) {
  const words = underlined(points, spots);
  draw((d) =>
    words.length ? under(d, words) : add(d, { kind: 'stroke', dots: bind(points, spots) }),
  );
}

/** ground is what the sheet is now. */
export const actsOn = (ground: () => Ground): Acts => ({
  down,
  press(x, y) {
    const b = get();
    if (b) press(b, ground(), x, y);
  },
  hold: (x, y) => hold(ground(), x, y),
  stroke: (points) => stroke(ground(), points),
  read: ({ dataset: { v, w } }) => draw((d) => under(d, [{ v: Number(v), w: Number(w) }])),
});
