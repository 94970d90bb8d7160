// The shared screen, for a call or a projector: only the text, very large, the key of the colours,
// and two buttons. What is drawn over the text is cleared with one press and never kept.
import '../../later.ts';
import { html } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';
import { t } from '../../i18n.ts';
import { clear } from '../../marking/drawing.ts';
import { linesHash } from '../../share/link.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { linesName } from '../../text/names.ts';
import { unread } from '../parts/unread.ts';
import type { Screen } from '../screen.ts';
import { draw } from './board.ts';
import { key } from './key.ts';
import { keysOf } from './keys.ts';
import { close, open } from './open.ts';
import { leaveSheet, sheetDrawn } from './sheet.ts';
import { sizeOf } from './size.ts';
import { sheetOf } from './text.ts';
import { keepAwake, letSleep } from './wake.ts';

function title({ route, catalogue }: State): string {
  return route.name === 'shared'
    ? linesName(catalogue.surahs, route.lines.from, route.lines.to)
    : '';
}

function view(s: State) {
  const b = s.board;
  return html`
    <main class="board" .style=${sizeOf(b?.step ?? 0)}>
      <h1 class="hidden" tabindex="-1">${title(s)}</h1>
      <div class="board-text">${b ? sheetOf(b) : unread(s.unreadable)}</div>
      <div class="board-foot">
        ${b && key(b)}
        <div class="board-tools">
          <button class="big" data-t="clear" @click=${() => draw(clear)}>
            ${t('shared.clear')}
          </button>
          <button class="big" data-t="close" @click=${leave}>${t('close')}</button>
        </div>
      </div>
      <p class="hidden" aria-live="assertive" aria-atomic="true" data-t="speech">
        ${keyed(b?.say, b?.say ?? '')}
      </p>
      <p class="hidden" id="keys-help">${t('shared.keys')}</p>
    </main>
  `;
}

/** Back to the lines, in place of this screen in the history. */
function leave() {
  const { route } = state.get();
  if (route.name === 'shared') location.replace(linesHash(route.lines));
}

const onKey = keysOf(leave);

export const shared: Screen = {
  title,
  view,
  enter(r) {
    addEventListener('keydown', onKey);
    keepAwake();
    if (r.name === 'shared') void open(r.lines);
  },
  drawn: sheetDrawn,
  leave() {
    removeEventListener('keydown', onKey);
    letSleep();
    leaveSheet();
    close();
  },
};
