// The highlights of the page, by name. They belong to the whole page: each owner's ranges are kept
// apart, so that an enlarged word or a second worked example does not clear the colours of the
// lines.

/** Whether the browser colours ranges of letters. */
export const ranges = typeof Highlight !== 'undefined' && !!CSS.highlights;

export type Ranges = Map<string, AbstractRange[]>;

const owned = new Map<string, Ranges>();

export function add(to: Ranges, name: string, range: AbstractRange) {
  const list = to.get(name);
  if (list) list.push(range);
  else to.set(name, [range]);
}

/** Gives an owner these ranges and no others. */
export function highlight(owner: string, now: Ranges) {
  if (!ranges) return;
  const names = new Set([...(owned.get(owner)?.keys() ?? []), ...now.keys()]);
  owned.set(owner, now);
  for (const name of names) {
    const all = new Highlight();
    for (const mine of owned.values()) for (const range of mine.get(name) ?? []) all.add(range);
    if (all.size) CSS.highlights.set(name, all);
    else CSS.highlights.delete(name);
  }
}
