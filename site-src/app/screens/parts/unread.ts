// In place of a text that is not there.
import { html } from 'lit-html';
import { t } from '../../i18n.ts';
import { reopen } from '../../offline/tools.ts';
import type { State } from '../../state.ts';
import { wayOut } from './wayout.ts';

/** In place of lines that are on their way, or cannot be shown. */
export const unread = (why: State['unreadable']) =>
  why
    ? html`<div class="card" role="alert" data-t="text-error">
        <p>${t(`error.${why}`)}</p>
        <button class="main" @click=${reopen}>${t('error.again')}</button>
        ${wayOut()}
      </div>`
    : html`<p class="quiet">${t('lines.loading')}</p>`;
