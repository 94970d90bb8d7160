// What else can be done with these lines: others, a link, print.
import { html, nothing } from 'lit-html';
import { offerUndo } from '../../actions/undo.ts';
import { ONE_FILE } from '../../edition/files.ts';
import { t } from '../../i18n.ts';
import { STOPS } from '../../marking/pencils.ts';
import * as practice from '../../practice/practice.ts';
import { giveHash, linesHash, printHash, sharedHash } from '../../share/link.ts';
import { send } from '../../share/send.ts';
import type { Practice } from '../../practice/practice.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Lines } from '../../types.ts';
import { leave, shut } from '../parts/box.ts';
import { onPaper, toHead } from './step.ts';

export const menu = (s: State, l: Lines) => html`
  <details class="menu" data-t="menu" @focusout=${leave}>
    <summary class="button plain">${t('menu.title')}</summary>
    <div class="menu-list">
      <a class="button plain" href="#/lines" data-t="choose">${t('menu.choose')}</a>
      ${
        ONE_FILE // it has no address that leads anybody to lines
          ? nothing
          : html`<button class="plain" data-t="share" @click=${closing(() => void share(l))}>
              ${t('menu.share')}
            </button>`
      }
      <a class="button plain" href=${giveHash(l)} data-t="give">${t('menu.give')}</a>
      ${
        s.practice && marking(s.practice)
          ? html`<button class="plain" data-t="on-paper" @click=${closing(onPaper)}>
              ${t('menu.paper')}
            </button>`
          : nothing
      }
      <button class="plain" data-t="restart" @click=${closing(anew)}>${t('menu.restart')}</button>
      <a class="button plain" href=${printHash(l)} data-t="print">${t('menu.print')}</a>
      <a class="button plain" href=${sharedHash(l)} data-t="shared">${t('menu.shared')}</a>
    </div>
  </details>
`;

/** Whether there are letters to be marked, and nothing of it was told yet. */
const marking = (p: Practice) => p.draft.phase === 'find' && p.pencils.some((x) => x.id !== STOPS);

const closing = (run: () => void) => () => {
  closeMenu();
  run();
};

/** Closes the menu, if it is open, with the keyboard on what opens it; whether it was. */
export function closeMenu(): boolean {
  const box = document.querySelector<HTMLDetailsElement>('.menu[open]');
  if (box) shut(box);
  return !!box;
}

/** From the beginning, with a way back. */
function anew() {
  const was = practice.get()?.draft;
  practice.restart();
  toHead();
  if (!was) return;
  offerUndo(t('menu.restarted'), () => {
    if (practice.get()?.draft.at === was.at) practice.restart(was);
  });
}

async function share(l: Lines) {
  const url = new URL(linesHash(l), location.href).href;
  const how = await send(url);
  if (how === 'copied') state.set({ notice: { text: t('share.copied') } });
  if (how === 'shown') state.set({ notice: { text: t('share.shown', { url }), hold: true } });
}
