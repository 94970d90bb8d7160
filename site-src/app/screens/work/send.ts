// The result of a session as a link back to the teacher.
import '../../later.ts';
import { html } from 'lit-html';
import { t } from '../../i18n.ts';
import { resultHash, resultLine } from '../../share/result.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Entry } from '../../types.ts';
import { closed } from '../parts/closed.ts';
import type { Screen } from '../screen.ts';
import { making, sayField } from './form.ts';
import { handing } from './handing.ts';

function view(s: State) {
  const { route } = s;
  const entry = route.name === 'send' ? s.sessions.find((x) => x.id === route.id) : undefined;
  return html`<main class="handed">
    ${s.closed ? closed(s.closed) : entry ? sending(s, entry) : gone()}
  </main>`;
}

function sending({ catalogue: c }: State, e: Entry) {
  const { say } = making();
  const words = [resultLine(c, e), say].filter(Boolean).join('\n');
  return html`
    <h1 tabindex="-1" class="off-paper">${t('nav.send')}</h1>
    <div class="off-paper">
      <p class="quiet">${t('send.what')}</p>
      <section class="card">${sayField(t('send.say'))}</section>
    </div>
    ${handing({ hash: resultHash(c, e, say), words })}
  `;
}

const gone = () => html`
  <h1 tabindex="-1" class="off-paper">${t('nav.send')}</h1>
  <p class="empty" data-t="send-gone">${t('send.gone')}</p>
  <a class="button big" href="#/record">${t('nav.record')}</a>
`;

export const send: Screen = {
  title: () => t('nav.send'),
  view,
  enter: () => state.set({ making: undefined }),
};
