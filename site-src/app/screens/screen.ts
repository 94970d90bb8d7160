// What a screen is: a function of the state, and what happens around its being drawn.
import type { TemplateResult } from 'lit-html';
import type { State } from '../state.ts';
import type { Route } from '../types.ts';

export interface Screen {
  /** What the page is called while the screen is shown. */
  title: (s: State) => string;
  /** What is seen. Called at every change of the state; it changes nothing itself. */
  view: (s: State) => TemplateResult;
  /** Makes an address ready that will probably be asked for; fails where it cannot be had. */
  ahead?: (r: Route) => Promise<void>;
  /** Once, before the screen is drawn first at an address. */
  enter?: (r: Route) => void;
  /** After each drawing: what has to be measured, or painted over the text. */
  drawn?: (s: State) => void;
  /** Once, when another address is shown. */
  leave?: () => void;
}

/** The names under which screens are fetched. A link that could not be read leads to the choice. */
export type Name = Exclude<Route['name'], 'bad'>;

export const nameOf = (r: Route): Name => (r.name === 'bad' ? 'choose' : r.name);
