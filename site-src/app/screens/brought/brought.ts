// What another app has shared with this one. A backup is shown as one that was chosen here, a link
// opens; what is neither is refused in words, and nothing of it stays.
import '../../later.ts';
import { html } from 'lit-html';
import { t } from '../../i18n.ts';
import { type Brought, broughtIn } from '../../share/brought.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { BROUGHT, stateOf } from '../../worker/names.ts';
import { closed } from '../parts/closed.ts';
import { restoreButton } from '../parts/restore.ts';
import { readFile } from '../record/reading.ts';
import type { Screen } from '../screen.ts';
import { paste } from '../work/paste.ts';

const view = (s: State) => html`
  <main class="handed">
    <h1 tabindex="-1">${t('nav.brought')}</h1>
    ${s.closed ? closed(s.closed) : s.brought ? refused(s.brought) : reading()}
  </main>
`;

const reading = () => html`<p class="quiet">${t('brought.reading')}</p>`;

const refused = (why: NonNullable<State['brought']>) => html`
  <p class="problem" role="alert" data-t="brought">${t(`brought.${why}`)}</p>
  <p class="row">${restoreButton('big')}</p>
  ${paste(true)}
`;

let taking = false;

/** Takes away what the worker has kept. */
async function take(): Promise<Brought> {
  const at = new URL('.', location.href).href;
  const box = await caches.open(stateOf(at));
  const form = await box.match(new URL(BROUGHT, at));
  await box.delete(new URL(BROUGHT, at));
  if (!form) return { bad: 'nothing' };
  return form.headers.has('Content-Type')
    ? broughtIn(state.get().catalogue, await form.formData())
    : { bad: 'big' };
}

async function open() {
  taking = true;
  const it = await take().catch((): Brought => ({ bad: 'nothing' }));
  if ('bad' in it) return state.set({ brought: it.bad });
  // What stands here is over: going back leads to what was before it.
  location.replace('hash' in it ? it.hash : state.readers().length ? '#/record' : '#/today');
  if ('file' in it) await readFile(it.file);
}

export const brought: Screen = {
  title: () => t('nav.brought'),
  view,
  enter() {
    taking = false;
    state.set({ brought: undefined });
  },
  // Not before the record is open.
  drawn(s) {
    if (!taking && !s.closed) void open();
  },
};
