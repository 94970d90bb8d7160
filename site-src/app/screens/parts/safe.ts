// How the record is kept on this device: all of it for the screen of the learner, and for Today a few
// lines where something is to be done.
import '../../later.ts';
import { html, nothing } from 'lit-html';
import { save } from '../../actions/backup.ts';
import { ask, backupDue, due, hush, look, putOff, sinceBackup } from '../../actions/safe.ts';
import { page } from '../../edition/files.ts';
import { dateName, t } from '../../i18n.ts';
import { today } from '../../record/week.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Screen } from '../screen.ts';
import { homeSteps, homeWord, installing, never } from './home.ts';

/** For the screen of the learner. */
export const safePanel = (s: State) => html`
  <section class="card" data-t="safe-panel">
    <h2>${t('safe.title')}</h2>
    <p data-t="safe-kept" .style=${'min-block-size:3em'}>${kept(s)}</p>
    <p class="quiet" data-t="safe-backed">${backed(s)}</p>
    <div class="row">${saving()} ${asking(s)} ${installing(s)}</div>
    ${more(s, s.safety?.kept === 'week')}
  </section>
`;

/** For Today; said once a visit, and put off for some days. The home screen comes when that is said. */
const keeping: Pick<Screen, 'view' | 'leave'> = {
  view: (s) => html`${due(s) ? lines(s) : homeWord(s)}`,
  leave() {
    if (due(state.get())) hush();
  },
};

const lines = (s: State) => html`
  <section class="card" aria-label=${t('safe.title')} data-t="safe">
    <p>${kept(s)}</p>
    ${s.safety?.question ? nothing : more(s, false)}
    <div class="row">
      ${asking(s)} ${installing(s)} ${backupDue(s) ? saving() : nothing}
      <button class="plain" data-t="safe-later" @click=${putOff}>${t('safe.later')}</button>
    </div>
  </section>
`;

/** Has Today say it. */
export async function sayKept() {
  addEventListener('appinstalled', never);
  state.set({ keeping });
  await look();
}

const kept = ({ safety }: State) =>
  safety && t(`safe.${safety.question ? 'question' : safety.kept}`);

function backed(s: State): string {
  const { backed } = s.settings;
  if (!backed) return t('safe.never');
  return t('safe.backed', { n: sinceBackup(s), day: dateName(today(new Date(backed))) });
}

const saving = () => html`
  <button class="big" data-t="safe-backup" @click=${() => void save()}>${t('backup.save')}</button>
`;

const asking = ({ safety }: State) =>
  safety?.question
    ? html`<button class="big" data-t="safe-ask" @click=${() => void ask()}>
        ${t('safe.ask')}
      </button>`
    : nothing;

/** What the family can do beside. The one file has no home screen. */
function more({ safety }: State, open: boolean) {
  if (safety?.kept === 'file') return inFile();
  return safety?.kept === 'installed' ? nothing : homeSteps(open);
}

const inFile = () => html`
  <details class="opens" data-t="safe-file">
    <summary>${t('safe.file-what')}</summary>
    <p>${t('safe.file-newer')}</p>
    <p>${t('safe.file-links')}</p>
    <p><a href=${page('about.html#this-file')}>${t('safe.file-more')}</a></p>
  </details>
`;
