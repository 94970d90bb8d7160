// Every type that more than one module speaks of.
import type { Below } from './i18n.ts';
import type { Lines } from './types/text.ts';

export * from './types/catalogue.ts';
export * from './types/record.ts';
export * from './types/text.ts';

/** Screens that their name alone leads to. */
export const PLAIN = [
  'today',
  'rules',
  'record',
  'learner',
  'learners',
  'print',
  'brought',
] as const;

/** Screens for what one person sends another: what they sent is read by the screen itself. */
export const SENT = ['work', 'result'] as const;

/**
 * What an address asks for. give makes work of lines, send the result of a session by its id; query
 * is what stands after the question mark.
 */
export type Route =
  | { name: Exclude<(typeof PLAIN)[number], 'record'> }
  // all of it; session: the id of one; edit: the form, for one or for one to add
  | { name: 'record'; session?: string; edit?: true }
  | { name: 'choose'; pick: string }
  | { name: 'lines' | 'give' | 'shared'; lines: Lines }
  | { name: 'send'; id: string }
  | { name: (typeof SENT)[number]; query: string }
  // a page by its name, and a place in it; in the one file alone
  | { name: 'read'; page: string; at: string }
  | { name: 'bad'; reason: Below<'bad'>; vars: Record<string, string | number> };
