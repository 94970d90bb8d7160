// Lines as work for a family: what is said with them, and the link.
import '../../later.ts';
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import { lessonsTaught } from '../../record/work.ts';
import { linesHash } from '../../share/link.ts';
import { heldBy, lengthsLine, MOST_TIMES, taskOf, workHash, workLine } from '../../share/work.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { linesName } from '../../text/names.ts';
import type { Lines } from '../../types.ts';
import { chips } from '../parts/chips.ts';
import { called } from '../parts/words.ts';
import { tick } from '../parts/tick.ts';
import type { Screen } from '../screen.ts';
import { make, making, sayField } from './form.ts';
import { handing } from './handing.ts';

const TIMES = Array.from({ length: MOST_TIMES }, (_, i) => i + 1);

function view(s: State) {
  const { route, catalogue: c } = s;
  if (route.name !== 'give') return html``;
  const { lines } = route;
  const x = making();
  const lessons = taughtHere(s).map((l) => l.id);
  const hash = workHash({
    lines,
    times: x.times,
    lessons: x.taught ? lessons : [],
    ...(x.held && { held: heldBy(s.settings) }),
    say: x.say,
  });
  const words = [workLine(c, lines, x.times), x.say].filter(Boolean).join('\n');
  return html`
    <main class="handed">
      <div class="off-paper">
        <a class="button plain" href=${linesHash(lines)} data-t="back"
          >${linesName(c.surahs, lines.from, lines.to)}</a
        >
      </div>
      <h1 tabindex="-1" class="off-paper">${t('nav.give')}</h1>
      <div class="off-paper">${form(s, lines, lessons.length)}</div>
      ${handing({ hash, words })}
    </main>
  `;
}

function taughtHere(s: State) {
  const l = state.learner(s);
  return l ? lessonsTaught(s.catalogue, new Set(state.taughtOf(l.id).map((x) => x.rule))) : [];
}

function form(s: State, lines: Lines, n: number) {
  const x = making();
  const lengths = lengthsLine(s.settings);
  const times = (n: number) => String(n);
  return html`
    <p class="quiet">${t('give.what')}</p>
    <section class="card">
      <p><b>${taskOf(s.catalogue, lines)}</b></p>
      ${chips(t('give.times'), 'times', TIMES, x.times, times, (times) => make({ times }))}
      ${sayField(t('give.say'))}
      ${
        n
          ? tick(
              'give-taught',
              t('give.taught', { n, child: called(state.learner(s)) }),
              x.taught,
              (taught) => make({ taught }),
            )
          : nothing
      }
      ${tick('give-held', t('give.held', { lengths }), x.held, (held) => make({ held }))}
    </section>
  `;
}

export const give: Screen = {
  title: () => t('nav.give'),
  view,
  enter: () => state.set({ making: undefined }),
};
