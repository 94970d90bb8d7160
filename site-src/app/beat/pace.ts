// The pace of a count, from taps along with a child's short vowel. All times are in milliseconds.

/** A count before anybody has tapped: unhurried reading, by our own choice. */
export const USUAL = 600;

/** No count is shorter or longer than these: what is tapped beyond them is no reading. */
export const SHORTEST = 250;
export const LONGEST = 1500;

/** After a longer pause the tapping begins anew. */
const PAUSE = 2500;
/** Two taps within this are one finger that trembled. */
const TREMBLE = 100;
/** The last taps that count. */
const KEPT = 9;

/** The taps with one more, at the time now. */
export function tapped(taps: readonly number[], now: number): number[] {
  const last = taps.at(-1);
  if (last === undefined || now - last > PAUSE || now < last) return [now];
  if (now - last < TREMBLE) return [...taps];
  return [...taps, now].slice(-KEPT);
}

/** The median time between taps, within the limits; undefined with fewer than two taps. */
export function paceOf(taps: readonly number[]): number | undefined {
  const gaps = taps
    .slice(1)
    .map((x, i) => x - taps[i]!)
    .sort((a, b) => a - b);
  if (!gaps.length) return undefined;
  const half = gaps.length >> 1;
  return within(gaps.length % 2 ? gaps[half]! : (gaps[half - 1]! + gaps[half]!) / 2);
}

/** The pace that was kept as text, or the usual one. */
export function readPace(kept: string | null): number {
  const n = kept === null || kept.trim() === '' ? NaN : Number(kept);
  return Number.isFinite(n) ? within(n) : USUAL;
}

/** When each of n dots begins to fill. */
export const starts = (n: number, pace: number): number[] =>
  Array.from({ length: n }, (_, i) => i * pace);

const within = (n: number) => Math.min(LONGEST, Math.max(SHORTEST, Math.round(n)));
