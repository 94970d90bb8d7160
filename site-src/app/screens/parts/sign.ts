// Today's sign that everything is kept on this device, and that the network is gone when it is. What
// that means is said when it is opened; until everything is kept, the line of kept.ts stands here.
import { html } from 'lit-html';
import { arrived } from '../../actions/part.ts';
import { t } from '../../i18n.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { keptLine } from './kept.ts';

export const sign = (s: State) =>
  keptLine(
    s.offline,
    html`
      <details class="opens" data-t="sign" @toggle=${tell}>
        <summary>${t(s.online ? 'offline.kept' : 'offline.gone')}</summary>
        <div .style=${'min-block-size:4.5rem'}>${s.keptHere?.view(s)}</div>
      </details>
    `,
  );

async function tell() {
  if (state.get().keptHere) return;
  const part = await arrived(import('./here.ts'));
  await part?.tell();
}
