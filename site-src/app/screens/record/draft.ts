// What was typed into forms, for the time that the tab lives, so that a page loaded again by mistake
// loses nothing.
import type { Typed } from '../../record/typed.ts';
import type { Form } from './kept.ts';

const nameOf = (key: string) => `sutur-form ${key}`;

export function keepDraft(key: string, { typed }: Form) {
  try {
    sessionStorage.setItem(nameOf(key), JSON.stringify(typed));
  } catch {
    // then it lasts as long as the page
  }
}

/** The keys of the forms in which something was typed. */
export function draftKeys(): string[] {
  try {
    const begin = nameOf('');
    return Object.keys(sessionStorage).flatMap((x) =>
      x.startsWith(begin) ? x.slice(begin.length) : [],
    );
  } catch {
    return [];
  }
}

export function forgetDraft(key: string) {
  try {
    sessionStorage.removeItem(nameOf(key));
  } catch {
    // there is none
  }
}

/** The part of a form that was typed before the page was loaded. */
export function keptDraft(key: string): Partial<Form> {
  try {
    const typed: unknown = JSON.parse(sessionStorage.getItem(nameOf(key)) ?? 'null');
    return isTyped(typed) ? { typed, touched: true } : {};
  } catch {
    return {};
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
