// Turning over long lines by the keyboard: whole lines of text, none of them cut.

/** Where a line of text is on the page, in pixels from the page's top. */
export interface Row {
  top: number;
  bottom: number;
}

/** Pixels over the first line that is seen. */
export const PAD = 8;

/**
 * Where the page is to begin after a key: rows are the lines of text, at is where it begins now, high
 * how much of it is seen. Undefined for keys that turn nothing. Pure.
 */
export function turned(rows: Row[], at: number, high: number, key: string): number | undefined {
  const now = at + PAD;
  const first = rows.find((r) => r.top >= now - 2) ?? rows.at(-1);
  if (!first) return undefined;
  const before = rows.filter((r) => r.top < now - 2);
  switch (key) {
    case 'ArrowDown':
      return rows.find((r) => r.top > now + 2)?.top;
    case 'ArrowUp':
      return before.at(-1)?.top ?? 0;
    case 'PageDown':
      return (rows.find((r) => r.bottom > at + high + 2 && r.top > now + 2) ?? rows.at(-1)!).top;
    case 'PageUp':
      return (before.find((r) => first.top - r.top <= high - PAD) ?? before.at(-1))?.top ?? 0;
    default:
      return undefined;
  }
}

/** The lines of text of some words' boxes, each by its first. */
export function rowsOf(boxes: Row[]): Row[] {
  const out: Row[] = [];
  for (const b of boxes) {
    const last = out.at(-1);
    if (!last || Math.abs(b.top - last.top) > (b.bottom - b.top) / 2) out.push(b);
  }
  return out;
}
