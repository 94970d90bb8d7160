// What the print screen begins with: the learner's place and the rule in hand, on the paper of the
// region.
import { child } from '../planner.ts';
import * as state from '../state.ts';
import type { Options } from './options.ts';

// Where Letter is the usual paper (Unicode CLDR (from memory), paperSize US-Letter).
const LETTER = new Set('BZ CA CL CO CR GT MX NI PA PH PR SV US VE'.split(' '));

function region(): string {
  try {
    return new Intl.Locale(navigator.language).maximize().region ?? '';
  } catch {
    return '';
  }
}

export function defaults(): Options {
  const s = state.get(),
    c = s.catalogue,
    l = state.learner(),
    [js, ja] = c.juz[29] ?? [78, 1],
    from = l?.place ?? { s: js, a: ja };
  const plan = child()?.today,
    rule = c.rules[plan?.rule ?? -1]?.id ?? '';
  return {
    kind: 'practice',
    part: 'verses',
    from,
    to: { s: from.s, a: Math.min(from.a + 9, c.surahs[from.s - 1]!.count) },
    rule,
    show: rule ? 'focus' : 'learnt',
    paper: LETTER.has(region()) ? 'letter' : 'a4',
    turn: 'portrait',
    size: 32,
    name: false,
  };
}
