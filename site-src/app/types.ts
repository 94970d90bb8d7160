// Every type that more than one module speaks of.
import type { Below } from './i18n.ts';
import type { Lines } from './types/text.ts';

export * from './types/catalogue.ts';
export type * from './types/record.ts';
export * from './types/text.ts';

/** Screens whose address is their name alone. */
export const PLAIN = ['today', 'rules', 'record', 'learner', 'print'] as const;

/** What an address asks for. */
export type Route =
  | { name: (typeof PLAIN)[number] }
  | { name: 'choose'; pick: string }
  | { name: 'lines' | 'shared'; lines: Lines }
  | { name: 'bad'; reason: Below<'bad'>; vars: Record<string, string | number> };
