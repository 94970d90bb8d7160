// The list of pencils for a screen that is no template yet.
import { render } from 'lit-html';
import { pencilPanel } from '../screens/parts/pencils.ts';
import * as state from '../state.ts';

/** The list; it follows what is changed in it. */
export function panel(): HTMLElement {
  const box = document.createElement('div');
  const draw = () => render(pencilPanel(state.get()), box);
  for (const kind of ['change', 'click'])
    box.addEventListener(kind, () => setTimeout(draw), { capture: true });
  draw();
  return box;
}
