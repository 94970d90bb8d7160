// How many places a session is to have.
import { html } from 'lit-html';
import { keep } from '../../actions/keep.ts';
import { t } from '../../i18n.ts';
import { DEFAULT, FIRST, LOADS, PLACES } from '../../plan/load.ts';
import * as store from '../../store/store.ts';
import type { Learner, Load } from '../../types.ts';
import { chips } from '../parts/chips.ts';

export function load(l: Learner) {
  const now = l.load ?? DEFAULT;
  const { first, later } = PLACES[now];
  const choose = (x: Load) => void keep(() => store.changeLearner(l.id, { load: x }));
  return html`
    <section class="card">
      ${chips(t('load.title'), 'load', LOADS, now, (x) => t(`load.${x}`), choose)}
      <p class="quiet" data-t="load-what">
        ${t('load.what', { n: FIRST, a: first[0], b: first[1], c: later[0], d: later[1] })}
      </p>
    </section>
  `;
}
