// What was typed into forms, for the time that the tab lives, so that a page loaded again by mistake
// loses nothing.
import { note, noted, notedBelow } from '../../notes.ts';
import type { Typed } from '../../record/typed.ts';
import type { Form } from './kept.ts';

const BEGIN = 'sutur-form ';

/** Keeps what is typed; where that cannot be, it lasts as long as the page. */
export const keepDraft = (key: string, { typed }: Form) =>
  note('visit', BEGIN + key, JSON.stringify(typed));

/** The keys of the forms in which something was typed. */
export const draftKeys = (): string[] => notedBelow('visit', BEGIN);

export const forgetDraft = (key: string) => note('visit', BEGIN + key, undefined);

/** The part of a form that was typed before the page was loaded. */
export function keptDraft(key: string): Partial<Form> {
  try {
    const typed: unknown = JSON.parse(noted('visit', BEGIN + key));
    return isTyped(typed) ? { typed, touched: true } : {};
  } catch {
    return {}; // there is none
  }
}

const isText = (...all: unknown[]) => all.every((x) => typeof x === 'string');

const isPlace = (x: Typed['from'] | undefined) => typeof x?.s === 'number' && isText(x.a);

/** Nothing but this page writes there, but another version of it may have. */
function isTyped(x: unknown): x is Typed {
  const y = x as Typed | null;
  return (
    !!y &&
    isText(y.day, y.outcome, y.minutes, y.note) &&
    typeof y.paper === 'boolean' &&
    isPlace(y.from) &&
    isPlace(y.to) &&
    Array.isArray(y.rules) &&
    y.rules.every((r) => isText(r?.rule, r?.found, r?.of))
  );
}
