// The result of a session that a family sent: what it says, and into whose record it goes.
import '../../later.ts';
import { html } from 'lit-html';
import { add, choose } from '../../actions/learner.ts';
import { take } from '../../actions/work.ts';
import { dayName, t } from '../../i18n.ts';
import { foundOf, readResult, type Result, resultId } from '../../share/result.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { linesName } from '../../text/names.ts';
import type { Entry } from '../../types.ts';
import { closed } from '../parts/closed.ts';
import { askName } from '../parts/name.ts';
import { called } from '../parts/words.ts';
import type { Screen } from '../screen.ts';
import { said } from './form.ts';
import { unread } from './unread.ts';
import { chosen, whose } from './whose.ts';

function view(s: State) {
  const { route } = s;
  const read = readResult(s.catalogue, route.name === 'result' ? route.query : '');
  return html`<main class="handed">
    ${'bad' in read ? unread(s, read) : shown(s, read.given)}
  </main>`;
}

function shown(s: State, r: Result) {
  const there = s.sessions.find((x) => resultId(x.id) === r.id);
  return html`
    <h1 tabindex="-1">${t('nav.result')}</h1>
    <section class="card" data-t="told-result">
      <h2>${linesName(s.catalogue.surahs, r.from, r.to)}</h2>
      ${found(s, r)}
      <p data-t="result-how">${how(r)}</p>
      <p class="quiet" data-t="result-day">${dayName(r.day)}</p>
      ${said(t('result.says'), r.say)}
    </section>
    ${s.closed ? closed(s.closed) : there ? known(s, there) : taking(s, r)}
  `;
}

const found = ({ catalogue: c }: State, r: Result) =>
  foundOf(c, r).map((x) => html`<p data-t="result-found">${x}</p>`);

const how = (r: Result) =>
  [
    t(`outcome.${r.outcome}`),
    r.helped && t('result.helped'),
    r.paper && t('record.on-paper'),
    r.together && t('result.together'),
    r.minutes && t('result.minutes', { n: r.minutes }),
  ]
    .filter(Boolean)
    .join(' · ');

/** It is in the record, by this link or as the session itself. */
function known(s: State, e: Entry) {
  const l = s.learners.find((x) => x.id === e.learner);
  const go = () => void choose(e.learner);
  return html`
    <p data-t="result-there">${t('result.there', { child: called(l) })}</p>
    <a class="button big" href="#/record" data-t="result-record" @click=${go}
      >${t('result.record')}</a
    >
  `;
}

function taking(s: State, r: Result) {
  const some = state.readers(s).length > 0;
  const ready = !some || !!chosen(s);
  return html`
    <form class="card" data-t="taking" @submit=${(e: SubmitEvent) => void go(e, r)}>
      ${
        some
          ? whose(s, t('result.whose'), (child) => t('result.into', { child }))
          : html`<p>${t('result.nobody')}</p>
              ${askName('result-name')}`
      }
      <button class="main" data-t="result-take" ?disabled=${!ready}>${t('result.take')}</button>
    </form>
  `;
}

async function go(e: SubmitEvent, r: Result) {
  e.preventDefault();
  const name = (e.currentTarget as HTMLFormElement).querySelector<HTMLInputElement>('#result-name');
  if (name) await add(name.value);
  const l = name ? state.learner() : chosen(state.get());
  if (l) await take(r, l.id, called(l));
}

export const result: Screen = {
  title: () => t('nav.result'),
  view,
  enter: () => state.set({ received: undefined }),
};
