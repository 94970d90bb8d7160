// Loads the catalogue and the surahs, and refuses any text that is not the text that was verified.
import type { Catalogue, Event, Lines, Ref, Surah, Verse } from '../types.ts';
import { TextError, verified } from './fetch.ts';
import { words } from './letters.ts';
import { base64url, digest } from './sha256.ts';

export { TextError };

/** Reads JSON that has the right digest, and the shape that ok looks for. */
async function load<T>(url: string, sha: string, ok: (x: Partial<T> | null) => unknown): Promise<T> {
  const x = JSON.parse(new TextDecoder().decode(await verified(url, sha))) as T | null;
  if (!ok(x)) throw new TextError('damaged', url);
  return x as T;
}

let base = '';

/** Loads the catalogue named on the page's root element; sha is its digest there. */
export async function loadCatalogue(url: string, sha: string): Promise<Catalogue> {
  base = url.slice(0, url.lastIndexOf('/') + 1);
  return load<Catalogue>(url, sha, (c) => c?.v === 2 && c.surahs?.length === 114 && [c.rules, c.families, c.details, c.juz, c.pages, c.lessons].every(Array.isArray));
}

interface RawVerse { t: string; d: string; p: number; j: number; l?: number[]; e: number[] }

export function decode(e: number[]): Event[] {
  const out: Event[] = [];
  for (let i = 0; i + 6 < e.length; i += 7) {
    const [w, l, rule, count, k, cw, cl] = e.slice(i, i + 7) as [number, number, number, number, number, number, number];
    out.push({ w, l, rule, count, when: k & 3, before: (k & 4) > 0, unwritten: (k & 8) > 0, detail: k >> 4, cw, cl });
  }
  return out;
}

const cache = new Map<number, Promise<RawVerse[]>>();

function surah(s: Surah): Promise<RawVerse[]> {
  let p = cache.get(s.n);
  if (!p) {
    p = load<{ v: RawVerse[] }>(base + s.file, s.sha, (x) => x?.v?.length === s.count).then((x) => x.v);
    p.catch(() => cache.delete(s.n));
    cache.set(s.n, p);
  }
  return p;
}

/** The verses from one place to another, both included, each checked against its digest. */
export async function verses(c: Catalogue, from: Ref, to: Ref): Promise<Verse[]> {
  const out: Verse[] = [];
  for (let s = from.s; s <= to.s; s++) {
    const raw = await surah(c.surahs[s - 1]!), last = s === to.s ? to.a : raw.length;
    for (let a = s === from.s ? from.a : 1; a <= last; a++) {
      const r = raw[a - 1]!;
      if (base64url(digest(r.t).subarray(0, 8)) !== r.d) throw new TextError('damaged', `${s}:${a}`);
      const ws = words(r.t);
      for (const w of r.l ?? []) ws[w]!.lined = true;
      out.push({ s, a, text: r.t, page: r.p, juz: r.j, words: ws, events: decode(r.e) });
    }
  }
  return cut(out, from.w ?? 0, to.w ?? Infinity);
}

/** Lines may begin and end within a verse: the words outside are left out, and their events. */
function cut(verses: Verse[], first: number, last: number): Verse[] {
  return verses.map((v, i) => {
    const end = v.words.length - 1, b = i === verses.length - 1 ? Math.min(last, end) : end, a = i === 0 ? Math.min(first, b) : 0;
    if (a === 0 && b === end) return v;
    const events = v.events.filter((e) => e.w >= a && e.w <= b).map((e) => ({ ...e, w: e.w - a }));
    return { ...v, words: v.words.slice(a, b + 1), events, open: b < end };
  });
}

/**
 * The words read before the first verse of a surah: the text of 1:1, checked like any verse. Empty where nothing is read
 * before (within a surah), where it is the verse itself (surah 1), and before surah 9, which has none.
 */
export async function opening(c: Catalogue, from: Ref, to: Ref): Promise<string> {
  for (let s = from.s; s <= to.s; s++) if (opens(s) && (s > from.s || from.a === 1)) return (await verses(c, { s: 1, a: 1 }, { s: 1, a: 1 }))[0]!.text;
  return '';
}

export const opens = (s: number) => s !== 1 && s !== 9;

/** Fetches what the lines need before they are asked for; errors wait until then. */
export const prefetch = (c: Catalogue, l: Lines) => {
  Promise.all([verses(c, l.from, l.to), opening(c, l.from, l.to)]).catch(() => undefined);
};
