// Every type that more than one module speaks of.
import type { Below } from './i18n.ts';
import type { Lines } from './types/text.ts';

export * from './types/catalogue.ts';
export type * from './types/record.ts';
export * from './types/text.ts';

/** Screens whose address is their name alone. */
export const PLAIN = ['today', 'rules', 'record', 'learner', 'learners', 'print'] as const;

/** Screens for what one person sends another: what they sent is read by the screen itself. */
export const SENT = ['work', 'result'] as const;

/**
 * What an address asks for. give makes work of lines, send the result of a session by its id; query
 * is what stands after the question mark.
 */
export type Route =
  | { name: (typeof PLAIN)[number] }
  | { name: 'choose'; pick: string }
  | { name: 'lines' | 'give'; lines: Lines }
  | { name: 'send'; id: string }
  | { name: (typeof SENT)[number]; query: string }
  | { name: 'bad'; reason: Below<'bad'>; vars: Record<string, string | number> };
