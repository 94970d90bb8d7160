// What stands after # in the address: which screen, and for lines the rule and the verses. Never a
// name.
import type { Below } from '../i18n.ts';
import { type Catalogue, type Lines, PLAIN, type Ref, type Route, SENT } from '../types.ts';
import { unescaped } from './escapes.ts';

/** More verses than this are not one sitting. */
export const MOST = 60;

const bad = (reason: Below<'bad'>, vars: Record<string, string | number> = {}): Route => ({
  name: 'bad',
  reason,
  vars,
});

// Digits of other scripts are taken too: a place may be typed on an Arabic or Persian keyboard.
export const ascii = (s: string) =>
  s.trim().replace(/[\u0660-\u0669\u06f0-\u06f9]/g, (d) => String(d.charCodeAt(0) & 15));

/**
 * Reads 78:1, also with a dot or blanks, or 2:255:8 with a word; undefined when it is no place. A
 * surah alone has verse 0, and a verse 0 that was asked for is -1, which no surah has.
 */
export function parseRef(s: string): Ref | undefined {
  const m = /^(\d{1,3})(?:\s*[:.]\s*(\d{1,3})(?:\s*[:.]\s*([1-9]\d{0,2}))?)?$/.exec(ascii(s));
  if (!m) return undefined;
  const r: Ref = { s: Number(m[1]), a: m[2] === undefined ? 0 : Number(m[2]) || -1 };
  return m[3] === undefined ? r : { ...r, w: Number(m[3]) - 1 };
}

const inside = (c: Catalogue, r: Ref) =>
  r.s >= 1 && r.s <= c.surahs.length && r.a >= 1 && r.a <= c.surahs[r.s - 1]!.count;
export const showRef = (r: Ref) => `${r.s}:${r.a}${r.w === undefined ? '' : `:${r.w + 1}`}`;

/** Verses from one to another, both included; below 1 where the second comes first. */
export function between(c: Catalogue, from: Ref, to: Ref): number {
  if (from.s > to.s) return 0;
  let n = to.a - from.a + 1;
  for (let s = from.s; s < to.s; s++) n += c.surahs[s - 1]!.count;
  return n;
}

/** The pencil that moves stops and marks no letters. */
export const STOPS = 'stops';

/** More pencils than these are not one sitting. */
export const MOST_PENCILS = 12;

/** Whether there is a pencil with the id. */
export const isPencil = (c: Catalogue, id: string) =>
  id === STOPS || c.rules.some((r) => r.id === id) || c.groups.some((g) => g.id === id);

/** The other pencils of an address, separated by commas. */
export function pencilsIn(list: string, rule: string): string[] {
  const ids = list.toLowerCase().split(',');
  const others = new Set(ids.map((x) => x.trim()).filter((x) => x && x !== rule));
  return [...others].slice(0, MOST_PENCILS);
}

/** Reads lines, or the rule that lines are to be chosen for. */
export function lines(c: Catalogue, q: URLSearchParams): Route {
  const rule = (q.get('rule') ?? '').trim().toLowerCase();
  if (rule && !c.rules.some((r) => r.id === rule)) return bad('rule', { found: rule });
  // A rule without a place: the rule is chosen, the lines are not yet. pick is what lesson pages
  // write.
  if (!q.has('from') && !q.has('to'))
    return { name: 'choose', pick: rule || (q.get('pick') ?? '').trim().toLowerCase() };
  let [first = '', second = ''] = ascii(q.get('from') ?? '').split(/\s*-\s*/);
  second = q.get('to') ?? second;
  const from = parseRef(first);
  if (!from) return bad('from', { found: first });
  const whole = from.a === 0;
  if (whole) from.a = 1;
  if (from.s < 1 || from.s > c.surahs.length) return bad('surah', { found: from.s });
  if (second && !/[:.]/.test(second)) second = `${from.s}:${second}`;
  const to = second
    ? parseRef(second)
    : { s: from.s, a: whole ? Math.min(MOST, c.surahs[from.s - 1]!.count) : from.a };
  if (!to) return bad('to', { found: second });
  for (const r of [from, to]) {
    if (r.s < 1 || r.s > c.surahs.length) return bad('surah', { found: r.s });
    if (!inside(c, r))
      return bad('verse', {
        found: Math.max(r.a, 0),
        surah: c.surahs[r.s - 1]!.la,
        n: c.surahs[r.s - 1]!.count,
      });
  }
  const n = between(c, from, to);
  if (n < 1 || (n === 1 && (from.w ?? 0) > (to.w ?? Infinity)))
    return bad('order', { from: showRef(from), to: showRef(to) });
  if (n > MOST) return bad('many', { n, most: MOST });
  const also = pencilsIn(q.get('also') ?? '', rule);
  const odd = also.find((id) => !isPencil(c, id));
  if (odd !== undefined) return bad('rule', { found: odd });
  return { name: 'lines', lines: { rule, ...(also.length && { also }), from, to } };
}

const give = (r: Route): Route => (r.name === 'lines' ? { name: 'give', lines: r.lines } : r);

/** The record, a session of it, or the form for a session; a name of a session that is none is kept. */
function record(q: URLSearchParams): Route {
  const session = q.get('session')?.trim();
  if (session) return { name: 'record', session, ...(q.has('edit') && { edit: true }) };
  return q.has('add') ? { name: 'record', edit: true } : { name: 'record' };
}

/** The address of a session of the record. */
export const sessionHash = (id: string) => `#/record?session=${encodeURIComponent(id)}`;

/** The address of the form that corrects a session, or adds one. */
export const editHash = (id?: string) =>
  id === undefined ? '#/record?add=1' : `${sessionHash(id)}&edit=1`;

const PAGE = /^(?:(?:lessons|licences)\/)?[\w-][\w.-]*\.(?:html|txt)$/;

/** A page of the site that is read; what is none stays an address that leads nowhere. */
function read(q: URLSearchParams): Route {
  const page = q.get('page') ?? '';
  if (!PAGE.test(page)) return bad('screen', { found: page });
  return { name: 'read', page, at: q.get('at') ?? '' };
}

/** Reads the address after #; anything unknown becomes a plain message that says what was found. */
export function parseHash(c: Catalogue, hash: string): Route {
  const bare = unescaped(hash, (s) => !s.includes('?') && /%(25)*3f/i.test(s));
  const [path = '', query = ''] = bare.replace(/^#?\/?/, '').split('?');
  const name = path.replace(/\/+$/, '');
  if (name === 'lines') return lines(c, new URLSearchParams(query));
  if (name === 'give') return give(lines(c, new URLSearchParams(query)));
  if (name === 'send') return { name, id: new URLSearchParams(query).get('id') ?? '' };
  if (name === 'read') return read(new URLSearchParams(query));
  const sent = SENT.find((x) => x === name.toLowerCase());
  if (sent) return { name: sent, query };
  if (name === 'record') return record(new URLSearchParams(query));
  if (name === 'shared') return shared(lines(c, new URLSearchParams(query)));
  const plain = PLAIN.find((x) => x === (name || 'today'));
  if (plain && plain !== 'record') return { name: plain };
  return bad('screen', { found: name });
}

/** The address at which lines are given as work. */
export const giveHash = (l: Lines): string => `#/give?${penciled(l)}`;

/** The address of the screen that sends the result of a session. */
export const sendHash = (id: string): string => `#/send?id=${id}`;

/** Lines on the shared screen; what are none stays as it is. */
const shared = (r: Route): Route => (r.name === 'lines' ? { ...r, name: 'shared' } : r);

/** The address of lines, after #; and on the shared screen. */
export const linesHash = (l: Lines): string => `#/lines?${penciled(l)}`;
export const sharedHash = (l: Lines): string => `#/shared?${penciled(l)}`;

/** The same without the other pencils: that by which lines are known, whatever is marked in them. */
export const linesKey = ({ rule, from, to }: Lines): string => linesHash({ rule, from, to });

/** The address of a sheet with these lines to mark. */
export const printHash = (l: Lines): string => `#/print?sheet=practice&${penciled(l)}`;

/** Rule, pencils and verses as an address has them. */
export const penciled = ({ rule, also, from, to }: Lines): string =>
  [
    rule && `rule=${rule}`,
    also?.length && `also=${also.join()}`,
    `from=${showRef(from)}`,
    `to=${showRef(to)}`,
  ]
    .filter(Boolean)
    .join('&');
