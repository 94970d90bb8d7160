// The way to the home screen: the steps of every kind of device, and for Today a word about it once
// Sutur is in use.
import { html, nothing } from 'lit-html';
import { due, install } from '../../actions/safe.ts';
import { changeSettings } from '../../actions/settings.ts';
import { t } from '../../i18n.ts';
import { type Device, device, DEVICES, installed } from '../../offline/device.ts';
import type { State } from '../../state.ts';

/** Sessions after which it is said. */
const IN_USE = 2;

/** Where there are steps for a family to take; the others have the browser's offer, or no way. */
const BY_HAND: Device[] = ['ios', 'mac', 'android', 'android-firefox'];

/**
 * Not before the site is kept, because the word promises that; not beside anything else that is
 * said, and not in a visit that has said how the record is kept, because the steps are part of that.
 */
const isDue = (s: State) =>
  s.sessions.length >= IN_USE &&
  !s.settings.noHome &&
  !!s.safety &&
  !s.safety.quiet &&
  !due(s) &&
  !(s.notice ?? s.newer ?? s.reading) &&
  s.kept &&
  s.offline.kind === 'ready' &&
  !installed() &&
  (!!s.install || BY_HAND.includes(device()));

/** For Today. */
export const homeWord = (s: State) => html`${isDue(s) ? word(s) : nothing}`;

const word = (s: State) => html`
  <section class="card" aria-label=${t('safe.home')} data-t="home">
    <p>${t('safe.home-why')}</p>
    ${s.install ? nothing : html`<p class="quiet">${t(`home.${device()}`)}</p>`}
    <div class="row">
      ${installing(s)}
      <button class="plain" data-t="home-no" @click=${never}>${t('safe.home-no')}</button>
    </div>
  </section>
`;

export const never = () => void changeSettings({ noHome: true });

/** The browser's own offer. */
export const installing = (s: State) =>
  s.install
    ? html`<button class="big" data-t="safe-install" @click=${() => void install()}>
        ${t('safe.install')}
      </button>`
    : nothing;

/** The steps of this device, and below them those of others. */
export function homeSteps(open: boolean) {
  const own = device();
  return html`
    <details class="opens" data-t="safe-home" ?open=${open}>
      <summary>${t('safe.home')}</summary>
      <p>${t(`home.${own}`)}</p>
      <details class="opens quiet" data-t="safe-others">
        <summary>${t('safe.others')}</summary>
        ${DEVICES.filter((x) => x !== own).map((x) => html`<p>${t(`home.${x}`)}</p>`)}
      </details>
    </details>
  `;
}
