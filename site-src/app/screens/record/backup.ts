// The record as a file: to save it, to hand it over, and to read one back.
import { html, nothing } from 'lit-html';
import { give, save } from '../../actions/backup.ts';
import { dateName, t } from '../../i18n.ts';
import { today } from '../../record/week.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { restoreButton } from '../parts/restore.ts';
import { called } from '../parts/words.ts';

export function backup(s: State) {
  const l = state.learner(s);
  return html`
    <section class="card backup">
      <h2>${t('backup.title')}</h2>
      <p>${t('backup.what')}</p>
      <p class="quiet" data-t="backed">${last(s)}</p>
      ${
        s.damaged > 0
          ? html`<p class="quiet" data-t="aside">${t('backup.aside', { n: s.damaged })}</p>`
          : nothing
      }
      <div class="row">
        <button class="big" data-t="backup" @click=${() => void save()}>${t('backup.save')}</button>
        ${restoreButton('big')}
      </div>
      ${
        l
          ? html`<p>${t('backup.give-what', { child: called(l) })}</p>
              <button class="big" data-t="give" @click=${() => void give(l.id)}>
                ${t('backup.give')}
              </button>`
          : nothing
      }
    </section>
  `;
}

/** When the record was saved last. */
const last = ({ settings: { backed } }: State) =>
  backed ? t('backup.last', { day: dateName(today(new Date(backed))) }) : t('backup.never');
