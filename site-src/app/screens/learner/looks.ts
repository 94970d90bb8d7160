// How the lines look, and the counts on which teachers differ.
import { html, nothing } from 'lit-html';
import { changeSettings } from '../../actions/settings.ts';
import { t } from '../../i18n.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { choices } from '../../text/counts.ts';
import { verses } from '../../text/data.ts';
import { type Length, LENGTHS, type Settings } from '../../types.ts';
import { chips } from '../parts/chips.ts';
import { called } from '../parts/words.ts';

const change = (patch: Partial<Settings>) => void changeSettings(patch);

export function looks(s: State) {
  const { rules } = s.catalogue;
  return html`
    <section class="card looks">
      <h2>${t('looks.title')}</h2>
      ${
        state.readers(s).length > 1
          ? html`<p class="quiet" data-t="looks-own">
              ${t('looks.own', { child: called(state.learner(s)) })}
            </p>`
          : nothing
      }
      ${slider(s, 'size', 0.7, 1.8)} ${slider(s, 'spacing', 0.4, 2.5)} ${preview(s)}
      ${pick(s, 'theme', ['auto', 'light', 'dark'])} ${large(s)}
      <h2>${t('looks.counts')}</h2>
      <p class="quiet">${t('looks.counts-what')}</p>
      ${LENGTHS.map((x) => pick(s, x, choices(rules, x)))}
    </section>
  `;
}

const slider = (s: State, key: 'size' | 'spacing', min: number, max: number) => html`
  <label for=${key}>${t(`looks.${key}`)}</label>
  <input
    id=${key}
    type="range"
    min=${min}
    max=${max}
    step="0.1"
    .value=${String(s.settings[key])}
    data-t=${key}
    @input=${(e: Event) => change({ [key]: Number((e.target as HTMLInputElement).value) })}
  />
`;

const pick = <K extends 'theme' | Length>(s: State, key: K, values: Settings[K][]) => {
  const words = (v: Settings[K]) =>
    typeof v === 'number' ? String(v) : t(`looks.theme.${v as Settings['theme']}`);
  return chips(t(`looks.${key}`), key, values, s.settings[key], words, (v) => change({ [key]: v }));
};

/** Whether small hands get every word large. */
const large = ({ settings }: State) => {
  const words = (x: string) => t(`looks.large.${x as 'yes' | 'no'}`);
  const choose = (x: string) => change({ large: x === 'yes' });
  return chips(
    t('looks.large'),
    'large',
    ['no', 'yes'],
    settings.large ? 'yes' : 'no',
    words,
    choose,
  );
};

/** The first verse of all, so that size and spacing are seen as they change. */
const preview = ({ sample }: State) =>
  sample === 'failed'
    ? nothing
    : html`<p class="text preview" lang="ar" dir="rtl" .textContent=${sample?.text ?? ''}></p>`;

export async function readSample() {
  const { sample, catalogue } = state.get();
  if (sample && sample !== 'failed') return;
  const first = { s: 1, a: 1 };
  const [verse] = await verses(catalogue, first, first).catch(() => []);
  state.set({ sample: verse ?? 'failed' });
}
