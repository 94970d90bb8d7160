// What is chosen on the screens for links, and pieces of their forms.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import { fitSay, LONGEST_SAY } from '../../share/coding.ts';
import * as state from '../../state.ts';

/** What is put into a link: a line of text, how often, and whether what is set here goes along. */
export interface Making {
  say: string;
  times: number;
  taught: boolean;
  held: boolean;
}

/**
 * What was chosen for a link that was opened: whom it is for, '' where nobody was chosen; what of a
 * teacher's settings is taken over, undefined for the default; why what was pasted cannot be opened.
 */
export interface Received {
  learner: string;
  taught?: boolean;
  held?: boolean;
  problem: string;
}

/** Times that are usual (ours). */
const USUAL = 3;

export const making = (): Making =>
  state.get().making ?? { say: '', times: USUAL, taught: true, held: true };
export const make = (patch: Partial<Making>) => state.set({ making: { ...making(), ...patch } });

export const received = (): Received => state.get().received ?? { learner: '', problem: '' };
export const receive = (patch: Partial<Received>) =>
  state.set({ received: { ...received(), ...patch } });

/** The line of text that goes along. */
export const sayField = (label: string) => html`
  <label for="say">${label}</label>
  <input
    id="say"
    dir="auto"
    autocomplete="off"
    maxlength=${LONGEST_SAY}
    .value=${making().say}
    aria-describedby="say-what"
    data-t="say"
    @input=${(e: Event) => make({ say: fitSay((e.target as HTMLInputElement).value) })}
  />
  <p class="quiet" id="say-what">${t('give.say-what')}</p>
`;

/** What somebody wrote, as text and apart from the words around it. */
export const said = (label: string, say: string) =>
  say
    ? html`<p class="quiet">${label}</p>
        <blockquote data-t="said"><bdi>${say}</bdi></blockquote>`
    : nothing;
