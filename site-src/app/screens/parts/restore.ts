// A backup is read: the file is chosen here, what reads it is fetched, because the first screen has
// the button too.
import { html } from 'lit-html';
import { arrived } from '../../actions/part.ts';
import { t } from '../../i18n.ts';

/** Looks as a button of the kind. */
export const restoreButton = (kind: string) => html`
  <label for="restore" class="button ${kind}">${t('first.restore')}</label>
  <input
    type="file"
    accept=".json,.txt,application/json,text/plain"
    id="restore"
    class="hidden-file"
    data-t="restore"
    @change=${(e: Event) => void read(e.currentTarget as HTMLInputElement)}
  />
`;

/** The same file can be chosen once more. */
async function read(input: HTMLInputElement) {
  const file = input.files?.[0];
  const part = await arrived(import('../record/reading.ts'));
  if (file) await part?.readFile(file);
  input.value = '';
}
