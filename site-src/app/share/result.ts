// A link by which a family sends what the record says of a session back to the teacher, and the
// same in a line of plain text. It names nobody.
import { dayName, t } from '../i18n.ts';
import { shareOf, tallies } from '../record/totals.ts';
import { linesName, nameOfRule } from '../text/names.ts';
import type { Catalogue, Entry, Outcome, Session, Tally } from '../types.ts';
import { date, MOST_PLACES } from '../store/checks.ts';
import { readText, writeText } from './coding.ts';
import { isPencil } from './link.ts';
import { linesIn, lineValues, type Read, refused, type Values, values, written } from './query.ts';

/** What is sent of a session, with a line of text, '' for none. */
export interface Result extends Omit<Entry, 'learner' | 'at' | 'note' | 'updated'> {
  say: string;
}

/** Characters of a session's id by which it is known elsewhere. */
const KNOWN = 14;

/**
 * By what a session is known in another record: not its own id, so that the two never take each
 * other's place where backups of both come together.
 */
export const resultId = (id: string) => (id.startsWith('r-') ? id : `r-${id.slice(0, KNOWN)}`);

const KEYS = 'id rule also from to day went found of more extra looked min how say'.split(' ');

/** The address of a session's result, after #. What the catalogue no longer has is left out. */
export function resultHash(c: Catalogue, e: Entry, say: string): string {
  const is = (id: string) => c.rules.some((r) => r.id === id);
  const rule = is(e.rule) ? e.rule : '';
  const also = (e.pencils ?? []).filter((id) => isPencil(c, id));
  const more = (e.also ?? []).filter((x) => is(x.rule));
  const number = (n: number | undefined) => (n ? String(n) : '');
  const list: Values = [
    ['id', resultId(e.id)],
    ...lineValues({ rule, also, from: e.from, to: e.to }),
    ['day', e.day],
    ['went', e.outcome],
    ['found', rule && number(e.found)],
    ['of', rule && number(e.found + e.missed)],
    ['more', more.map((x) => `${x.rule}.${x.found}.${x.found + x.missed}`).join()],
    ['extra', number(e.extra)],
    ['looked', e.looked === undefined ? '' : String(e.looked)],
    ['min', number(e.minutes)],
    ['how', HOW.map(([sign, field]) => (e[field] ? sign : '')).join('')],
    ['say', writeText(say)],
  ];
  return `#/result?${written(list)}`;
}

/** What else is said of a session, a sign each. */
const HOW = [
  ['h', 'helped'],
  ['p', 'paper'],
  ['t', 'together'],
] as const;

/** Reads what stands after the question mark; now is the present in ms. */
export function readResult(c: Catalogue, query: string, now = Date.now()): Read<Result> {
  const read = values(query, KEYS);
  if ('bad' in read) return read;
  const of = (key: string) => read.given.get(key) ?? '';
  const lines = linesIn(c, read.given);
  if ('bad' in lines) return lines;
  const day = readDay(of('day'), now);
  if ('bad' in day) return day;
  const counts = readCounts(c, of);
  if ('bad' in counts) return counts;
  const say = readText(of('say'));
  if (say === undefined) return refused('field', 'say');
  const { rule, also, from, to } = lines.given;
  if (!rule && of('of')) return refused('field', 'of');
  const pencils = also?.length ? { pencils: also } : {};
  return { given: { rule, ...pencils, from, to, day: day.given, ...counts.given, say } };
}

const COUNT = /^([1-9]\d{0,3})?$/;

/** What values look like; empty where they may be left out. */
const SHAPE: Record<string, RegExp> = {
  id: /^r-[\w-]{1,62}$/,
  went: /^(alone|some|much)$/,
  found: COUNT,
  of: COUNT,
  extra: COUNT,
  looked: /^(0|[1-9]\d{0,3})?$/,
  min: /^([1-9]|[1-9]\d|[1-5]\d\d|600)?$/,
  how: /^h?p?t?$/,
};

type Counts = Omit<Result, 'rule' | 'pencils' | 'from' | 'to' | 'day' | 'say'>;

/** Reads what is said of a session beside its lines and its day. */
function readCounts(c: Catalogue, of: (key: string) => string): Read<Counts> {
  const most = (key: string) => (SHAPE[key] === COUNT || key === 'looked' ? MOST_PLACES : Infinity);
  const odd = Object.keys(SHAPE).find((k) => !SHAPE[k]!.test(of(k)) || Number(of(k)) > most(k));
  if (odd) return refused('field', odd);
  const more = readTallies(of('more'));
  if (!more) return refused('field', 'more');
  const strange = more.find((x) => !c.rules.some((r) => r.id === x.rule));
  if (strange) return refused('rule', strange.rule);
  const [found, all] = [Number(of('found')), Number(of('of'))];
  if (found > all) return refused('field', 'found');
  const how = HOW.filter(([sign]) => of('how').includes(sign)).map(([, field]) => [field, true]);
  return {
    given: {
      id: of('id'),
      found,
      missed: all - found,
      extra: Number(of('extra')),
      outcome: of('went') as Outcome,
      ...(more.length && { also: more }),
      ...(of('looked') && { looked: Number(of('looked')) }),
      ...(of('min') && { minutes: Number(of('min')) }),
      helped: false,
      ...(Object.fromEntries(how) as Partial<Counts>),
    },
  };
}

function readTallies(s: string): Tally[] | undefined {
  const list = s ? s.split(',') : [];
  const read = list.flatMap((x) => {
    const [, rule, found, of] = /^([\w-]{1,64})\.(\d{1,4})\.(\d{1,4})$/.exec(x) ?? [];
    return rule && Number(found) <= Number(of) && Number(of) <= MOST_PLACES
      ? [{ rule, found: Number(found), missed: Number(of) - Number(found) }]
      : [];
  });
  return read.length === list.length && list.length < 100 ? read : undefined;
}

/** A day that has begun somewhere on earth, where it is up to 14 hours later than UTC. */
function readDay(day: string, now: number): Read<string> {
  if (!date(day)) return refused('field', 'day');
  const begun = Date.parse(`${day}T00:00Z`) - 14 * 3600e3;
  return begun > now ? { bad: 'day', vars: { day: dayName(day) } } : { given: day };
}

/**
 * The session as it is kept for a learner. Its time is noon of its day: what it was is not sent, and
 * every device keeps the same.
 */
export const sessionOf = ({ say, ...r }: Result, learner: string): Session => ({
  ...r,
  learner,
  at: `${r.day}T12:00:00.000Z`,
  ...(say && { note: say }),
  marks: [],
  stops: [],
});

/** What was marked, and how much of it was found where somebody knows: a text for each rule. */
export function foundOf(c: Catalogue, e: Entry | Result): string[] {
  const all = tallies(e).map((x) => {
    const rule = nameOfRule(c.rules, x.rule);
    const { found, of } = shareOf([x]);
    return of ? t('result.found', { rule, n: found, of }) : rule;
  });
  return all.length ? all : [t('record.reading')];
}

/** A session in a line of text: its lines, rules and places, how it went, and the day. */
export const resultLine = (c: Catalogue, e: Entry | Result): string =>
  [
    linesName(c.surahs, e.from, e.to),
    ...foundOf(c, e),
    ...(e.paper ? [t('record.on-paper')] : []),
    t(`outcome.${e.outcome}`),
    dayName(e.day),
  ].join(' · ');
