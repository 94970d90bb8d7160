// The second look before everything of a learner is deleted: what goes, and a backup first.
import { html, nothing } from 'lit-html';
import { save } from '../../actions/backup.ts';
import { remove } from '../../actions/people.ts';
import { t } from '../../i18n.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Learner } from '../../types.ts';
import { closeDialog } from '../parts/box.ts';
import { disc } from '../parts/disc.ts';
import { called } from '../parts/words.ts';

/** What a backup that is saved here says of itself is said here: nothing beside a dialog is heard. */
export function removal({ notice }: State, l: Learner) {
  const sessions = state.sessionsOf(l.id).length;
  const rules = state.taughtOf(l.id).length;
  const confirm = (e: Event) => {
    closeDialog(e);
    void remove(l);
  };
  return html`
    <dialog
      class="asks"
      data-t="confirm"
      aria-labelledby="sure"
      @close=${() => state.set({ removing: undefined })}
    >
      <h2 class="who" id="sure">
        ${disc(l)}<span>${t('people.sure', { child: called(l) })}</span>
      </h2>
      <p>${t('people.goes')}</p>
      <ul data-t="goes">
        ${sessions ? html`<li>${t('people.goes-sessions', { n: sessions })}</li>` : nothing}
        ${rules ? html`<li>${t('people.goes-rules', { n: rules })}</li>` : nothing}
        <li>${t('people.goes-rest')}</li>
      </ul>
      <p class="quiet" role="status">${notice?.text}</p>
      <div class="row">
        <button class="big" data-t="keep" @click=${closeDialog}>${t('people.keep')}</button>
        <button class="big" data-t="save-first" @click=${() => void save()}>
          ${t('people.backup-first')}
        </button>
        <button class="plain" data-t="confirm-remove" @click=${confirm}>
          ${t('people.remove')}
        </button>
      </div>
    </dialog>
  `;
}
