// What the record keeps of the lines that were marked: places by rule.
import type { Draft, Entry, Tally } from '../types.ts';

/** How a pencil's places came out: which were found, and all there are, by the id of their rule. */
export interface Outcomes {
  pencil: string;
  found: string[];
  missed: string[];
  extra: number;
}

type Counts = Pick<Entry, 'found' | 'missed' | 'extra' | 'also' | 'pencils' | 'looked' | 'paper'>;

/** Numbers by rule, those of the rule of the lines apart from the others. */
export function countsOf(d: Draft, all: Outcomes[]): Counts {
  const { also: pencils } = d.lines;
  const tallies = d.paper ? all.flatMap((x) => onPaper(x, d.paper!)) : tally(all);
  const own = tallies.find((x) => x.rule === d.lines.rule);
  const also = tallies.filter((x) => x !== own);
  return {
    found: own?.found ?? 0,
    missed: own?.missed ?? 0,
    extra: d.paper ? 0 : all.reduce((n, x) => n + x.extra, 0),
    ...(also.length && { also }),
    ...(pencils?.length && { pencils }),
    ...(d.paper ? { paper: true } : d.looked !== undefined && { looked: d.looked }),
  };
}

/**
 * The same for a session of several learners: whose the places found were, nobody knows, and of no
 * rule it is told how many. Rules without a place in the lines are left out, as on paper.
 */
export function togetherOf(d: Draft, all: Outcomes[]): Counts & { together: true } {
  const { paper: _, ...counts } = countsOf({ ...d, paper: {} }, all);
  return { ...counts, together: true };
}

function tally(all: Pick<Outcomes, 'found' | 'missed'>[]): Tally[] {
  const by = new Map<string, Tally>();
  const of = (rule: string) => {
    const one = by.get(rule) ?? { rule, found: 0, missed: 0 };
    by.set(rule, one);
    return one;
  };
  for (const x of all) {
    for (const rule of x.found) of(rule).found++;
    for (const rule of x.missed) of(rule).missed++;
  }
  return [...by.values()];
}

/**
 * What somebody said of a pencil's places on paper. No number, where nobody did, and where some of
 * several rules' places were found: nobody knows of which.
 */
function onPaper({ pencil, found, missed }: Outcomes, said: Draft['paper'] & object): Tally[] {
  const places = [...found, ...missed];
  const n = said[pencil];
  const rules = [...new Set(places)];
  if (n === undefined || (n < places.length && rules.length > 1))
    return rules.map((rule) => ({ rule, found: 0, missed: 0 }));
  return tally([{ found: places.slice(0, n), missed: places.slice(n) }]);
}
