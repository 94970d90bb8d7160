// Reads the file of a surah: its text, and the events that stand behind their letters. The
// generator's surah.go says what the bytes mean. Pure; what is not as it must be is a TextError,
// and nothing of it is shown.
import type { Catalogue, Event, Verse } from '../types.ts';
import { sha256 } from './digest.ts';
import { TextError } from './fetch.ts';
import { words } from './letters.ts';

export type Code = Pick<Catalogue, 'alphabet' | 'kinds'>;

/** Version of the data files; another one is refused. */
export const VERSION = 4;

/**
 * The text of a verse, and what stands behind its letters: after how many UTF-16 units, and which
 * kind.
 */
export interface Packed {
  text: string;
  at: number[];
  kind: number[];
}

const MAGIC = [0x53, 0x55, 0x52];
const HEAD = 36;

/** The verses of a surah of so many; name is that of the file, for errors. */
export async function unpack(
  b: Uint8Array,
  code: Code,
  count: number,
  name: string,
): Promise<Packed[]> {
  if (b.length < HEAD || MAGIC.some((x, i) => b[i] !== x)) throw new TextError('damaged', name);
  if (b[3] !== VERSION) throw new TextError('version', `${name}: ${b[3]}`);
  const { alphabet } = code;
  const list: Packed[] = [];
  const units = new Uint16Array(b.length - HEAD);
  let n = 0;
  let start = 0;
  let at: number[] = [];
  let kind: number[] = [];
  for (let i = HEAD; i < b.length; i++) {
    const x = b[i]!;
    if (x >= alphabet.length) {
      at.push(n - start);
      kind.push(x - alphabet.length);
      continue;
    }
    if ((units[n++] = alphabet.charCodeAt(x)) !== 0x0a) continue;
    list.push({ text: '', at, kind });
    start = n;
    at = [];
    kind = [];
  }
  const text = new TextDecoder('utf-16le').decode(units.subarray(0, n));
  const sum = await sha256(new TextEncoder().encode(text));
  if (start !== n || at.length || list.length !== count || sum.some((x, i) => b[i + 4] !== x))
    throw new TextError('damaged', name);
  text
    .split('\n')
    .slice(0, count)
    .forEach((t, i) => {
      list[i]!.text = t;
    });
  return list;
}

/** A verse in words and letters, with its events; s and a are surah and verse. */
export function verse({ text, at, kind }: Packed, { kinds }: Code, s: number, a: number): Verse {
  const list = words(text);
  const events: Event[] = [];
  const wrong = () => new TextError('damaged', `${s}:${a}`);
  let w = 0;
  let from = 0;
  let l = 0; // the word, where it begins, its letter
  at.forEach((end, i) => {
    while (list[w] && end > from + list[w]!.text.length) {
      from += list[w++]!.text.length + 1;
      l = 0;
    }
    const word = list[w];
    if (!word) throw wrong();
    if (kind[i] === kinds.length && end === from + word.text.length) {
      word.lined = true;
      return;
    }
    while (l < word.letters.length && from + word.letters[l]!.to < end) l++;
    const k = kinds[kind[i]!];
    const letter = word.letters[l];
    if (!k || !letter || from + letter.to !== end) throw wrong();
    const [rule, count, flags, cw = 0, cause] = k;
    events.push({
      w,
      l,
      rule,
      count,
      when: flags & 3,
      before: (flags & 4) > 0,
      unwritten: (flags & 8) > 0,
      detail: flags >> 4,
      cw,
      cl: cause === undefined ? -1 : cw === 0 ? l + cause : cause,
    });
  });
  return { s, a, text, words: list, events };
}
