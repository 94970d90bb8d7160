// What the print screen begins with: the learner's place and the rule in hand, on the paper of the
// region.
import type { Catalogue, Ref } from '../types.ts';
import { usual } from './booklet.ts';
import type { Options } from './options.ts';

// Where Letter is the usual paper (Unicode CLDR (from memory), paperSize US-Letter).
const LETTER = new Set('BZ CA CL CO CR GT MX NI PA PH PR SV US VE'.split(' '));

function regionOf(language: string): string {
  try {
    return new Intl.Locale(language).maximize().region ?? '';
  } catch {
    return '';
  }
}

/** The first juz that children learn. */
const LAST_JUZ = 30;

/** rule is the id of the rule in hand, empty for none; language the reader's, as in BCP 47. */
export function defaults(
  c: Catalogue,
  place: Ref | undefined,
  rule: string,
  language: string,
): Options {
  const [s, a] = c.juz[LAST_JUZ - 1] ?? [78, 1];
  const from = place ?? { s, a };
  return {
    kind: 'practice',
    part: 'verses',
    from,
    to: { s: from.s, a: Math.min(from.a + 9, c.surahs[from.s - 1]!.count) },
    rule,
    also: [],
    show: rule ? 'focus' : 'learnt',
    paper: LETTER.has(regionOf(language)) ? 'letter' : 'a4',
    turn: 'portrait',
    size: 32,
    name: false,
    booklet: usual(c, from),
  };
}
