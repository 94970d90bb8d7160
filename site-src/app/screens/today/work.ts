// Work from a teacher: its lines, how often they were done, what the teacher wrote.
import '../../later.ts';
import { html, nothing } from 'lit-html';
import { putAway } from '../../actions/work.ts';
import { t } from '../../i18n.ts';
import { doneOf } from '../../record/work.ts';
import { linesHash } from '../../share/link.ts';
import { taskOf } from '../../share/work.ts';
import * as state from '../../state.ts';
import { linesName } from '../../text/names.ts';
import { sendLink } from '../parts/send.ts';
import type { Screen } from '../screen.ts';

export const work: Pick<Screen, 'view'> = {
  view(s) {
    const l = state.learner(s);
    if (!l?.work) return html``;
    const { lines, times, say } = l.work;
    const done = doneOf(l.work, state.sessionsOf(l.id));
    const name = linesName(s.catalogue.surahs, lines.from, lines.to);
    return html`
      <h2>${t('work.title')}</h2>
      <p data-t="work-done">${name} · ${t('work.done', { n: done.length, of: times })}</p>
      <p>${taskOf(s.catalogue, lines)}</p>
      ${say ? html`<p class="quiet"><bdi>${say}</bdi></p>` : nothing}
      <div class="row">
        <a class="button big" href=${linesHash(lines)} data-t="work-open">${t('work.start')}</a>
        ${done[0] ? sendLink(done[0]) : nothing}
        <button class="plain" data-t="work-away" @click=${() => void putAway(l)}>
          ${t('work.away')}
        </button>
      </div>
    `;
  },
};
