// All words of the one file: those of the site, and what is said differently there.
import later from '../strings/later.json' with { type: 'json' };
import own from '../strings/one-file.json' with { type: 'json' };
import { add, type Key } from './i18n.ts';

const other: Partial<Record<Key, string>> = own;

add(later);
add(other as Record<string, string>);
