// What is new, before a newer version is taken.
import '../../later.ts';
import { html } from 'lit-html';
import { t } from '../../i18n.ts';
import { news } from '../../offline/news.ts';
import * as state from '../../state.ts';
import { closeDialog } from './box.ts';

/** Shows what the newer version brings; take begins to use it. */
export async function showNews(take: () => void) {
  const items = await news();
  const gone = () => state.set({ dialog: undefined });
  const view = () => html`
    <dialog class="asks" data-t="news" aria-labelledby="news-title" @close=${gone}>
      <h2 id="news-title" tabindex="-1" autofocus>${t('update.news')}</h2>
      ${
        items.length
          ? html`<ul>
              ${items.map((x) => html`<li>${x}</li>`)}
            </ul>`
          : html`<p>${t('update.no-news')}</p>`
      }
      <div class="row">
        <button class="main" data-t="news-take" @click=${take}>${t('update.take')}</button>
        <button class="plain" data-t="news-later" @click=${closeDialog}>
          ${t('update.later')}
        </button>
      </div>
    </dialog>
  `;
  state.set({ dialog: view });
}
