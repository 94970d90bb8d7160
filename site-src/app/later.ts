// The words of the screens that are fetched later. Each of them imports this first.
import later from '../strings/later.json' with { type: 'json' };
import { add } from './i18n.ts';

add(later);
