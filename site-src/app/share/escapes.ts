// Links are escaped by programs that pass them on, sometimes more than once.

/** How often at most. */
const DEEP = 4;

/** Undoes escapes while s looks as if it had been escaped once more. */
export function unescaped(s: string, escaped: (s: string) => boolean): string {
  for (let i = 0; i < DEEP && escaped(s); i++)
    try {
      s = decodeURIComponent(s);
    } catch {
      return s;
    }
  return s;
}
