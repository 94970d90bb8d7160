// For screens that are not templates yet.
import { html } from 'lit-html';
import type { Screen } from './screen.ts';
import type { View } from './view.ts';
import type { Route } from '../types.ts';

export function legacy(make: (r: Route) => View): Screen {
  let view: View | undefined;
  return {
    title: () => view?.title ?? '',
    view: () => html`${view?.node}`,
    enter: (r) => {
      view = make(r);
    },
    drawn: () => view?.update(),
    leave: () => view?.leave?.(),
  };
}
