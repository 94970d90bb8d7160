// What another app has shared with this one: a backup, or words with a link to work or a result in them.
import type { Below } from '../i18n.ts';
import type { Catalogue } from '../types.ts';
import { hashIn } from './query.ts';
import { readResult } from './result.ts';
import { readWork } from './work.ts';

/** A file to be read, an address of ours, or why it is neither, as a key below "brought.". */
export type Brought = { file: File } | { hash: string } | { bad: Below<'brought'> };

/** The fields of the form, as the manifest names them; the likeliest place of a link comes first. */
const WORDS = ['url', 'text', 'title'] as const;
const FILES = 'files';

/**
 * The address that a message has in it. Where the link is whole, what the message says after it is
 * left out: it may name somebody.
 */
export function linkIn(c: Catalogue, text: string): string | undefined {
  const hash = hashIn(text);
  const [bare, screen, query] = /^#\/(\w+)\?(.*?\bend=\w+)/.exec(hash ?? '') ?? [];
  if (!query) return hash;
  const read = screen === 'work' ? readWork(c, query) : readResult(c, query);
  return 'given' in read ? bare : hash;
}

/** A field without a file has an empty one without a name. */
const isFile = (x: File | string): x is File => typeof x !== 'string' && !!(x.name || x.size);

export function broughtIn(c: Catalogue, form: FormData): Brought {
  const files = form.getAll(FILES).filter(isFile);
  if (files.length > 1) return { bad: 'several' };
  const [file] = files;
  if (file) return { file };
  const words = WORDS.map((x) => form.get(x)).filter((x) => typeof x === 'string' && x.trim());
  if (!words.length) return { bad: 'nothing' };
  const hash = linkIn(c, words.join('\n'));
  return hash ? { hash } : { bad: 'foreign' };
}
