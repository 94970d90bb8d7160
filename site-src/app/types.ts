// Every type that more than one module speaks of.
import type { Below } from './i18n.ts';
import type { Lines } from './types/text.ts';

export * from './types/catalogue.ts';
export type * from './types/record.ts';
export * from './types/text.ts';

/** Screens that their name alone leads to. */
export const PLAIN = ['today', 'rules', 'record', 'learner', 'print'] as const;

/** What an address asks for. */
export type Route =
  | { name: Exclude<(typeof PLAIN)[number], 'record'> }
  // all of it; session: the id of one; edit: the form, for one or for one to add
  | { name: 'record'; session?: string; edit?: true }
  | { name: 'choose'; pick: string }
  | { name: 'lines'; lines: Lines }
  | { name: 'bad'; reason: Below<'bad'>; vars: Record<string, string | number> };
