// What another app has shared with this one: a backup, or words with a link to work or a result in them.
import type { Below } from '../i18n.ts';
import { hashIn } from './query.ts';

/** A file to be read, an address of ours, or why it is neither, as a key below "brought.". */
export type Brought = { file: File } | { hash: string } | { bad: Below<'brought'> };

/** The fields of the form, as the manifest names them; the likeliest place of a link comes first. */
const WORDS = ['url', 'text', 'title'] as const;
const FILES = 'files';

export function broughtIn(form: FormData): Brought {
  const files = form.getAll(FILES).filter((x) => typeof x !== 'string' && (x.name || x.size));
  if (files.length > 1) return { bad: 'several' };
  const [file] = files;
  if (file && typeof file !== 'string') return { file };
  const words = WORDS.map((x) => form.get(x)).filter((x) => typeof x === 'string' && x.trim());
  if (!words.length) return { bad: 'nothing' };
  const hash = hashIn(words.join('\n'));
  return hash ? { hash } : { bad: 'foreign' };
}
