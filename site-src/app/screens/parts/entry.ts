// Where a session of the record leads.
import { isPencil, linesHash } from '../../share/link.ts';
import type { Catalogue, Entry } from '../../types.ts';

/** The address of its lines, with the pencils it had as far as there still are such. */
export function entryHash(c: Catalogue, { rule, pencils = [], from, to }: Entry): string {
  const also = pencils.filter((id) => isPencil(c, id));
  const known = c.rules.some((r) => r.id === rule) ? rule : '';
  return linesHash({ rule: known, ...(also.length && { also }), from, to });
}
