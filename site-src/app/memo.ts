// What is computed once for what it depends on, because it is asked for at each drawing.

export const sameItems = (a: readonly unknown[], b: readonly unknown[]) =>
  a.length === b.length && a.every((x, i) => x === b[i]);

/** The last answer for some values; another is made when one of them is another. */
export function memo<Answer>() {
  let last: { of: readonly unknown[]; answer: Answer } | undefined;
  return (of: readonly unknown[], make: () => Answer): Answer => {
    if (!last || !sameItems(last.of, of)) last = { of, answer: make() };
    return last.answer;
  };
}
