// Where lines and pages end. Both sheets are laid out from the one result, so their lines are equal
// by construction. A word is never cut: lines are lists of whole words, and the sign of a verse's
// end belongs to the verse's last word.

/**
 * A word's width, and whether a verse ends with it. Any unit, the same as that of gap and length.
 */
export interface Piece {
  width: number;
  end: boolean;
}

/** The cost of a word alone on its line. */
const LONE = 0.6;
/** The cost of a verse's last word alone on the next line. */
const ORPHAN = 0.15;
/** What a line gains that ends with a verse. */
const BONUS = 0.03;

/**
 * The first piece of every line: of all ways to break, the one with the evenest lines. A piece
 * longer than a line has one for itself.
 */
export function lines(pieces: Piece[], gap: number, length: number): number[] {
  const n = pieces.length;
  const cost = new Float64Array(n + 1).fill(Infinity);
  const from = new Int32Array(n + 1);
  cost[0] = 0;
  for (let i = 0; i < n; i++) {
    let wide = -gap;
    for (let j = i + 1; j <= n; j++) {
      wide += gap + pieces[j - 1]!.width;
      if (wide > length && j > i + 1) break;
      const slack = Math.max(0, 1 - wide / length);
      const last = j === n;
      let c = cost[i]! + (last ? Math.max(0, slack - 0.4) ** 2 : slack ** 2);
      if (j === i + 1 && n > 1) c += LONE;
      if (pieces[i]!.end && i > 0 && !pieces[i - 1]!.end) c += ORPHAN;
      if (pieces[j - 1]!.end) c -= BONUS;
      if (c < cost[j]!) {
        cost[j] = c;
        from[j] = i;
      }
    }
  }
  const out: number[] = [];
  for (let j = n; j > 0; j = from[j]!) out.unshift(from[j]!);
  return out;
}

/**
 * The first row of every page. Heads stay with the line after them, and the last page has two lines
 * at least where it can.
 */
export function pages(heads: boolean[], first: number, rest: number): number[] {
  const n = heads.length;
  const out: number[] = [];
  for (let i = 0; i < n;) {
    out.push(i);
    let j = Math.min(n, i + Math.max(1, out.length === 1 ? first : rest));
    while (j < n && j > i + 1 && heads[j - 1]) j--;
    i = j;
  }
  const at = out[out.length - 1]!;
  if (out.length > 1 && n - at === 1 && at - out[out.length - 2]! > 2 && !heads[at - 2])
    out[out.length - 1] = at - 1;
  return out;
}
