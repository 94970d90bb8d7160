// The record as a file: to save it, and to read one back.
import { html, nothing } from 'lit-html';
import { restore, save } from '../../actions/backup.ts';
import { t } from '../../i18n.ts';
import type { State } from '../../state.ts';

/** Reads the file that was chosen; the same one can be chosen once more. */
async function read(e: Event) {
  const input = e.currentTarget as HTMLInputElement;
  const file = input.files?.[0];
  if (file) await restore(file);
  input.value = '';
}

export const backup = ({ damaged }: State) => html`
  <section class="card backup">
    <h2>${t('backup.title')}</h2>
    <p>${t('backup.what')}</p>
    ${damaged > 0 ? html`<p class="quiet" data-t="aside">${t('backup.aside', { n: damaged })}</p>` : nothing}
    <div class="row">
      <button class="big" data-t="backup" @click=${() => void save()}>${t('backup.save')}</button>
      <label for="restore" class="button big">${t('backup.restore')}</label>
      <input
        type="file"
        accept=".json,application/json"
        id="restore"
        class="hidden-file"
        data-t="restore"
        @change=${(e: Event) => void read(e)}
      />
    </div>
  </section>
`;
