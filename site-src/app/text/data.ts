// Loads the catalogue and the surahs, and refuses any text that is not the text that was verified.
import type { Catalogue, Ref, Surah, Verse } from '../types.ts';
import { hex } from './digest.ts';
import { TextError, verified } from './fetch.ts';
import { type Packed, unpack, verse, VERSION } from './surah.ts';

export { TextError };

let base = '';

/** Loads the catalogue named on the page's root element; sha is its digest there. */
export async function loadCatalogue(url: string, sha: string): Promise<Catalogue> {
  base = url.slice(0, url.lastIndexOf('/') + 1);
  const c = JSON.parse(
    new TextDecoder().decode(await verified(url, sha)),
  ) as Partial<Catalogue> | null;
  if (c && c.v !== VERSION) throw new TextError('version', `${url}: ${c.v}`);
  if (
    c?.surahs?.length !== 114 ||
    !c.alphabet ||
    !c.themes ||
    ![c.rules, c.families, c.details, c.kinds, c.juz, c.pages, c.lessons].every(Array.isArray)
  )
    throw new TextError('damaged', url);
  return c as Catalogue;
}

/** The address of a file that lies beside the catalogue. */
export const dataFile = (name: string) => base + name;

const cache = new Map<number, Promise<Packed[]>>();

/** The file of a surah; its name has the first five bytes of its digest. */
function file(s: Surah): string {
  const digest = Uint8Array.from(atob(s.sha), (x) => x.charCodeAt(0));
  return `s${String(s.n).padStart(3, '0')}.${hex(digest.subarray(0, 5))}.bin.gz`;
}

function surah(c: Catalogue, s: Surah): Promise<Packed[]> {
  let p = cache.get(s.n);
  if (!p) {
    const url = dataFile(file(s));
    p = verified(url, s.sha).then((b) => unpack(b, c, s.count, url));
    p.catch(() => cache.delete(s.n));
    cache.set(s.n, p);
  }
  return p;
}

/**
 * The verses from one place to another, both included; the text of their surahs has been checked
 * against its digest.
 */
export async function verses(c: Catalogue, from: Ref, to: Ref): Promise<Verse[]> {
  const packed = await Promise.all(c.surahs.slice(from.s - 1, to.s).map((s) => surah(c, s)));
  const out = packed.flatMap((list, i) => {
    const s = from.s + i;
    const first = i ? 1 : from.a;
    const last = s === to.s ? to.a : list.length;
    return list.slice(first - 1, last).map((p, k) => verse(p, c, s, first + k));
  });
  return cut(out, from.w ?? 0, to.w ?? Infinity);
}

/** Lines may begin and end within a verse: the words outside are left out, and their events. */
function cut(verses: Verse[], first: number, last: number): Verse[] {
  return verses.map((v, i) => {
    const end = v.words.length - 1;
    const b = i === verses.length - 1 ? Math.min(last, end) : end;
    const a = i === 0 ? Math.min(first, b) : 0;
    if (a === 0 && b === end) return v;
    const events = v.events.filter((e) => e.w >= a && e.w <= b).map((e) => ({ ...e, w: e.w - a }));
    return { ...v, words: v.words.slice(a, b + 1), events, open: b < end };
  });
}

/**
 * The words read before the first verse of a surah: the text of 1:1, checked like any verse. Empty
 * where nothing is read before (within a surah), where it is the verse itself (surah 1), and before
 * surah 9, which has none.
 */
export async function basmala(c: Catalogue, from: Ref, to: Ref): Promise<string> {
  for (let s = from.s; s <= to.s; s++)
    if (opens(s) && (s > from.s || from.a === 1)) return (await readOpening(c))[0]!.text;
  return '';
}

/** The verse 1:1. */
export const readOpening = (c: Catalogue) => verses(c, { s: 1, a: 1 }, { s: 1, a: 1 });

export const opens = (s: number) => s !== 1 && s !== 9;
