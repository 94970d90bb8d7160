// In place of a screen about the record where the record cannot be opened: what is wrong, and a way
// on. It is never taken for an empty one.
import { html } from 'lit-html';
import { t } from '../../i18n.ts';
import { reopen } from '../../offline/tools.ts';
import type { Reason } from '../../store/unavailable.ts';
import { wayOut } from './wayout.ts';

export const closed = (why: Reason) => html`
  <section class="card" role="alert" data-t="closed">
    <h1 tabindex="-1">${t('closed.title')}</h1>
    <p>${t(`closed.${why}`)}</p>
    <div class="row">
      <button class="main" data-t="closed-again" @click=${reopen}>${t('error.again')}</button>
      <a class="button big" href="#/lines">${t('today.choose')}</a>
    </div>
    ${wayOut()}
  </section>
`;
