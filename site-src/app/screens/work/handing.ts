// A link to be handed over: sent, copied, shown as a picture to a camera, printed.
import { html, nothing, svg } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';
import { ONE_FILE } from '../../edition/files.ts';
import { t } from '../../i18n.ts';
import { picture, QUIET } from '../../share/picture.ts';
import { copy, hasSheet, send } from '../../share/send.ts';
import * as state from '../../state.ts';

/** What is handed over: an address after #, and a line of text that says what it is. */
export interface Handing {
  hash: string;
  words: string;
}

/** The address that is handed over. The one file has none; what stands after # can be pasted instead. */
const urlOf = ({ hash }: Handing) => (ONE_FILE ? hash : new URL(hash, location.href).href);

export function handing(h: Handing) {
  const url = urlOf(h);
  return html`
    <section class="card slip" data-t="slip">
      <p class="words" data-t="words">${h.words}</p>
      ${ONE_FILE ? html`<p data-t="send-file">${t('send.file')}</p>` : guard([url], () => qr(url))}
      <p class="address" dir="ltr" data-t="address">${url}</p>
      <p class="quiet off-paper" data-t="length">${t('send.length', { n: url.length })}</p>
      <div class="row">
        ${
          hasSheet()
            ? html`<button class="main" data-t="send" @click=${() => void sendIt(h)}>
                ${t('send.send')}
              </button>`
            : nothing
        }
        <button class=${hasSheet() ? 'big' : 'main'} data-t="copy" @click=${() => void copyIt(h)}>
          ${t('send.copy')}
        </button>
        ${ONE_FILE ? nothing : shown(h)}
      </div>
    </section>
  `;
}

/** For a camera. */
const shown = (h: Handing) => html`
  <button class="plain" data-t="large" @click=${() => enlarge(h)}>${t('send.large')}</button>
  <button class="plain" data-t="print-slip" @click=${() => print()}>${t('send.print')}</button>
`;

/** The picture, dark on light in every theme, as cameras expect it. */
function qr(url: string) {
  const p = picture(url);
  if (!p) return html`<p class="quiet">${t('send.no-picture')}</p>`;
  const side = p.size + 2 * QUIET;
  return html`<svg
    class="qr"
    role="img"
    aria-label=${t('send.picture')}
    viewBox="${-QUIET} ${-QUIET} ${side} ${side}"
    data-t="qr"
  >
    ${svg`<path d=${p.path}></path>`}
  </svg>`;
}

/** Over the whole screen, to be seen from afar. */
function enlarge(h: Handing) {
  const close = () => state.set({ dialog: undefined });
  const url = urlOf(h);
  const large = html`
    <dialog
      class="asks slip large"
      aria-label=${t('send.picture')}
      data-t="large-slip"
      @close=${close}
    >
      <p class="words">${h.words}</p>
      ${qr(url)}
      <p class="address" dir="ltr">${url}</p>
      <form method="dialog"><button class="big" data-t="small">${t('send.small')}</button></form>
    </dialog>
  `;
  state.set({ dialog: () => large });
}

async function sendIt(h: Handing) {
  tell(await (ONE_FILE ? send('', textOf(h)) : send(urlOf(h), h.words)), h);
}

async function copyIt(h: Handing) {
  tell((await copy(textOf(h))) ? 'copied' : 'shown', h);
}

const textOf = (h: Handing) => `${h.words}\n${urlOf(h)}`;

function tell(how: 'sent' | 'copied' | 'shown', h: Handing) {
  if (how === 'copied') state.set({ notice: { text: t('share.copied-text') } });
  const text = t('share.shown', { url: textOf(h) });
  if (how === 'shown') state.set({ notice: { text, hold: true } });
}
