// Values as JSON has them.

/** A value as JSON has it; what it cannot have, in words. */
export function plain(x: unknown): unknown {
  try {
    return JSON.parse(
      JSON.stringify(x, (_, v: unknown) => (typeof v === 'bigint' ? String(v) : v)),
    );
  } catch {
    return String(x);
  }
}

/** Two values that hold the same have the same text, whatever the order of their fields. */
export const canonical = (x: unknown): string =>
  JSON.stringify(x, (_, v: unknown) =>
    typeof v === 'object' && v !== null && !Array.isArray(v)
      ? Object.fromEntries(Object.entries(v).sort(([a], [b]) => (a < b ? -1 : 1)))
      : v,
  );
