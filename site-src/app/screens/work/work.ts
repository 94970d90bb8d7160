// Work from a teacher, opened by its link: what it is, who does it, what is taken over with it.
import '../../later.ts';
import { html, nothing } from 'lit-html';
import { add } from '../../actions/learner.ts';
import { start } from '../../actions/work.ts';
import { t } from '../../i18n.ts';
import { lessonsMissing } from '../../record/work.ts';
import { linesHash } from '../../share/link.ts';
import { type Given, lengthsLine, readWork, taskOf } from '../../share/work.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { linesName } from '../../text/names.ts';
import { type Learner, LENGTHS, type Lines } from '../../types.ts';
import { closed } from '../parts/closed.ts';
import { askName } from '../parts/name.ts';
import { called } from '../parts/words.ts';
import { tick } from '../parts/tick.ts';
import type { Screen } from '../screen.ts';
import { receive, received, said } from './form.ts';
import { unread } from './unread.ts';
import { chosen, whose } from './whose.ts';

function view(s: State) {
  const { route } = s;
  const read = readWork(s.catalogue, route.name === 'work' ? route.query : '');
  return html`<main class="handed">
    ${'bad' in read ? unread(s, read) : shown(s, read.given)}
  </main>`;
}

const nameOf = (s: State, l: Lines) => linesName(s.catalogue.surahs, l.from, l.to);

const shown = (s: State, g: Given) => html`
  <h1 tabindex="-1">${t('nav.work')}</h1>
  <section class="card" data-t="given">
    <h2>${nameOf(s, g.lines)}</h2>
    <p data-t="given-task">${taskOf(s.catalogue, g.lines)}</p>
    <p data-t="given-times">${t('given.times', { n: g.times })}</p>
    ${said(t('given.says'), g.say)}
  </section>
  ${s.closed ? shut(s, g) : starting(s, g)}
`;

/** Where nothing can be kept the lines open all the same. */
const shut = (s: State, g: Given) => html`
  ${closed(s.closed!)}
  <a class="button big" href=${linesHash(g.lines)} data-t="work-lines">${nameOf(s, g.lines)}</a>
`;

function starting(s: State, g: Given) {
  const some = state.readers(s).length > 0;
  const l = chosen(s);
  return html`
    <form class="card" data-t="starting" @submit=${(e: SubmitEvent) => void go(e, g)}>
      ${some ? whose(s, t('given.who'), (child) => t('given.for', { child })) : askName('work-name')}
      ${l || !some ? offers(s, g, l) : nothing}
      ${
        l?.work
          ? html`<p class="quiet">${t('given.instead', { lines: nameOf(s, l.work.lines) })}</p>`
          : nothing
      }
      <button class="main" data-t="work-start" ?disabled=${some && !l}>${t('given.start')}</button>
      <p class="quiet">${t('given.kept')}</p>
    </form>
  `;
}

/** The default: where the record is still empty nothing can be put in place of anything. */
const isNew = (l: Learner | undefined) => !l || !state.sessionsOf(l.id).length;

const takes = (key: 'taught' | 'held', l: Learner | undefined) => received()[key] ?? isNew(l);

/** What the teacher has set otherwise; nobody has to take it. */
function offers(s: State, g: Given, l: Learner | undefined) {
  const child = called(l);
  const rules = new Set(l ? state.taughtOf(l.id).map((x) => x.rule) : []);
  const more = lessonsMissing(s.catalogue, g.lessons, rules);
  const now = { ...s.settings, ...l?.own };
  const other = g.held && LENGTHS.some((x) => g.held![x] !== now[x]);
  const box = (key: 'taught' | 'held', label: string) =>
    tick(`take-${key}`, label, takes(key, l), (on) => receive({ [key]: on }));
  return html`
    ${
      more.length
        ? html`${box('taught', t('given.taught', { n: more.length, child }))}
            <details class="opens">
              <summary>${t('given.which')}</summary>
              <ul>
                ${more.map((x) => html`<li>${x.name}</li>`)}
              </ul>
            </details>`
        : nothing
    }
    ${other ? box('held', t('given.held', { lengths: lengthsLine(g.held!) })) : nothing}
  `;
}

async function go(e: SubmitEvent, g: Given) {
  e.preventDefault();
  const s = state.get();
  const name = (e.currentTarget as HTMLFormElement).querySelector<HTMLInputElement>('#work-name');
  const taking = { taught: takes('taught', chosen(s)), held: takes('held', chosen(s)) };
  const { s: surah, a } = g.lines.from;
  if (name) await add(name.value, { place: { s: surah, a } });
  const l = name ? state.learner() : chosen(s);
  if (l) await start(l.id, g, taking);
}

export const work: Screen = {
  title: () => t('nav.work'),
  view,
  enter: () => state.set({ received: undefined }),
};
