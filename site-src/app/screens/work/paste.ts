// A link that was sent as a message, to be pasted: an app on the home screen is not always what a
// link opens.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import { linkIn } from '../../share/brought.ts';
import * as state from '../../state.ts';
import { receive, received } from './form.ts';

/** headed: under a heading of its own. */
export const paste = (headed: boolean) => html`
  <form class="card" data-t="paste" @submit=${go}>
    ${headed ? html`<h2>${t('paste.title')}</h2>` : nothing}
    <p class="quiet" id="paste-what">${t('paste.what')}</p>
    <label for="paste-field">${t('paste.field')}</label>
    <textarea
      id="paste-field"
      rows="4"
      required
      aria-describedby="paste-what"
      data-t="paste-field"
    ></textarea>
    <p class="problem" role="alert" data-t="problem" .textContent=${received().problem}></p>
    <button class="main" data-t="paste-open">${t('paste.open')}</button>
  </form>
`;

function go(e: SubmitEvent) {
  e.preventDefault();
  const field = (e.currentTarget as HTMLFormElement).querySelector('textarea')!;
  const hash = linkIn(state.get().catalogue, field.value);
  if (!hash) return receive({ problem: t('paste.none') });
  receive({ problem: '' });
  field.value = '';
  location.hash = hash;
}
