// When counts are written: once for all marks of a pencil, at every letter, or never.
import { html } from 'lit-html';
import { changeSettings } from '../../actions/settings.ts';
import { t } from '../../i18n.ts';
import type { State } from '../../state.ts';
import type { Settings } from '../../types.ts';
import { chips } from '../parts/chips.ts';

type Counting = NonNullable<Settings['counting']>;

const WAYS: Counting[] = ['once', 'every', 'never'];

const choose = (counting: Counting) => void changeSettings({ counting });

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
