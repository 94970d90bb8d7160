// Things that belong together.

/** The things of a list by what they share, in the order in which they come. */
export function groupBy<Key, Thing>(list: readonly Thing[], key: (x: Thing) => Key) {
  const groups = new Map<Key, Thing[]>();
  for (const x of list) {
    const own = groups.get(key(x));
    if (own) own.push(x);
    else groups.set(key(x), [x]);
  }
  return groups;
}
