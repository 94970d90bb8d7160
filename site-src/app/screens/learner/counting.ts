// When counts are written: once for all marks of a pencil, at every letter, or never.
import { html } from 'lit-html';
import { keep } from '../../actions/keep.ts';
import { t } from '../../i18n.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import * as store from '../../store/store.ts';
import type { Settings } from '../../types.ts';
import { chips } from '../parts/chips.ts';

type Counting = NonNullable<Settings['counting']>;

const WAYS: Counting[] = ['once', 'every', 'never'];

function choose(counting: Counting) {
  state.set({ settings: { ...state.get().settings, counting } });
  void keep(() => store.changeSettings({ counting }));
}

export const counting = ({ settings }: State) => html`
  <section class="card">
    ${chips(
      t('learner.counting'),
      'counting',
      WAYS,
      settings.counting ?? 'once',
      (x) => t(`learner.counting-${x}`),
      choose,
    )}
    <p class="quiet">${t('learner.counting-what')}</p>
  </section>
`;
