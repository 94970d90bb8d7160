// The end of lines that several read together: how each of them read, one press each, then a session
// for each is kept in one go.
import { html } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import { finishTogether } from '../../actions/finish.ts';
import { t } from '../../i18n.ts';
import { closing } from '../../practice/keeping.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import type { Outcomes } from '../../record/entry.ts';
import { type Learner, type Outcome, OUTCOMES } from '../../types.ts';
import { disc } from '../parts/disc.ts';
import { called } from '../parts/words.ts';

/** What can be said of each. */
const ANSWERS = [...OUTCOMES, 'away'] as const;

export function each(p: Practice, all: Learner[], outcomes: Outcomes[]) {
  const said = all.filter((l) => p.answers[l.id]);
  const n = said.filter((l) => p.answers[l.id] !== 'away').length;
  return html`
    <h2>${t('end.together')}</h2>
    <ul class="each">
      ${repeat(
        all,
        (l) => l.id,
        (l) => question(p, l),
      )}
    </ul>
    <div class="stack">
      <button
        class="main"
        data-t="keep-each"
        ?disabled=${!n || said.length < all.length}
        @click=${() => void keep(p, all, outcomes)}
      >
        ${t('end.keep', { n })}
      </button>
    </div>
  `;
}

const question = (p: Practice, l: Learner) => html`
  <li data-t="each">
    <p class="who">${disc(l)}<bdi>${called(l)}</bdi></p>
    <div class="row choice" role="group" aria-label=${called(l)}>
      ${ANSWERS.map(
        (x) =>
          html`<button
            class="chip"
            data-t="${x}-${l.id}"
            aria-pressed=${p.answers[l.id] === x}
            @click=${() => practice.set({ answers: { ...p.answers, [l.id]: x } })}
          >
            ${x === 'away' ? t('end.away') : t(`outcome.${x}`)}
          </button>`,
      )}
    </div>
  </li>
`;

async function keep(p: Practice, all: Learner[], outcomes: Outcomes[]) {
  const read = all.flatMap((l): [string, Outcome][] => {
    const x = p.answers[l.id];
    return x && x !== 'away' ? [[l.id, x]] : [];
  });
  closing(p.draft.id);
  if (!(await finishTogether(p.draft, outcomes, read))) closing('');
}
