// The first time: whom we read with. The name may stay empty, and never leaves the device.
import { html } from 'lit-html';
import { add, LONGEST } from '../../actions/learner.ts';
import { t } from '../../i18n.ts';

export const first = () => html`
  <form class="first" data-t="first" @submit=${begin}>
    <h1 tabindex="-1">${t('first.title')}</h1>
    <p>${t('first.what')}</p>
    <section class="card">
      <label for="name">${t('first.name')}</label>
      <input
        id="name"
        name="name"
        maxlength=${LONGEST}
        autocomplete="off"
        placeholder=${t('child')}
        data-t="name"
      />
      <p class="quiet">${t('first.private')}</p>
      <button class="main" data-t="begin">${t('first.begin')}</button>
      <p class="quiet">${t('first.place')}</p>
    </section>
    <p class="quiet">${t('caution')} <a href="about.html">${t('nav.about')}</a></p>
  </form>
`;

/** Goes on with the learner; the keyboard begins with the heading of what comes in place of this. */
async function begin(e: SubmitEvent) {
  e.preventDefault();
  const form = e.currentTarget as HTMLFormElement;
  await add(form.querySelector('input')!.value);
  if (!form.isConnected)
    document.querySelector<HTMLElement>('.today h1')?.focus({ preventScroll: true });
}
