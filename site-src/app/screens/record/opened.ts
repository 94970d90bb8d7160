// A session of the record by itself: its lines, what was marked and where, counts, rules, note.
import { html, nothing } from 'lit-html';
import { remove } from '../../actions/sessions.ts';
import { dayName, t } from '../../i18n.ts';
import { tallies } from '../../record/totals.ts';
import { today } from '../../record/week.ts';
import { editHash } from '../../share/link.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { session } from '../../store/snapshot.ts';
import { verses } from '../../text/data.ts';
import { linesName } from '../../text/names.ts';
import type { Entry, Tally } from '../../types.ts';
import { entryHash } from '../parts/entry.ts';
import { called } from '../parts/words.ts';
import type { Opened } from './kept.ts';
import { keptLines, markList } from './marks.ts';
import { note, ruleName } from './row.ts';

export const entryOf = (s: State, id: string) => s.sessions.find((x) => x.id === id);

/** What is on its way, so that it is asked for once. */
let reading: Entry | undefined;

/** Reads the session with its marks and the text of its lines; anew once the record says otherwise. */
export async function readOpened(id: string) {
  const entry = entryOf(state.get(), id);
  if (!entry || reading === entry || state.get().opened?.entry === entry) return;
  reading = entry;
  const { catalogue } = state.get();
  const text = verses(catalogue, entry.from, entry.to).catch(() => 'failed' as const);
  const whole = session(id).catch(() => undefined);
  const opened = { entry, session: await whole, verses: await text };
  if (reading === entry) state.set({ opened });
}

export function opened(s: State, id: string) {
  const entry = entryOf(s, id);
  if (!entry) return unknown();
  const l = s.learners.find((x) => x.id === entry.learner);
  const x = s.opened?.entry.id === id ? s.opened : undefined;
  return html`
    <p class="no-print"><a href="#/record" data-t="all-sessions">${t('record.all')}</a></p>
    <h1 tabindex="-1">${linesName(s.catalogue.surahs, entry.from, entry.to)}</h1>
    <p>${t('session.of', { child: called(l), day: dayName(entry.day) })}</p>
    ${facts(entry)}
    <section class="card" aria-busy=${!x}>
      <h2>${t('session.lines')}</h2>
      ${x ? lines(x) : html`<p class="quiet">${t('session.loading')}</p>`}
    </section>
    ${buttons(s, entry)}
  `;
}

/** Said of an address whose session is not there. */
export const unknown = () => html`
  <h1 tabindex="-1">${t('nav.record')}</h1>
  <p data-t="unknown-session">${t('record.unknown')}</p>
  <a class="button big" href="#/record" data-t="all-sessions">${t('record.all')}</a>
`;

const lines = ({ session: s, verses: text }: Opened) => html`
  ${text === 'failed' ? html`<p class="quiet">${t('session.no-lines')}</p>` : keptLines(text)}
  ${s ? nothing : html`<p class="quiet" data-t="no-marks">${t('session.damaged')}</p>`}
  ${s && text !== 'failed' ? markList(s, text) : nothing}
  ${s?.stops.length ? html`<p class="quiet">${t('session.stops', { n: s.stops.length })}</p>` : nothing}
`;

function facts(s: Entry) {
  const all = tallies(s);
  const said = [
    s.paper ? t('record.on-paper') : '',
    s.together ? t('record.together') : '',
    s.minutes === undefined ? '' : t('record.minutes', { n: s.minutes }),
  ].filter(Boolean);
  return html`<dl class="facts" data-t="facts">
    <dt>${t('session.rules')}</dt>
    <dd>${all.length ? all.map((x) => html`<p>${tally(x)}</p>`) : t('session.no-rule')}</dd>
    <dt>${t('session.went')}</dt>
    <dd>
      <p>${[t(`outcome.${s.outcome}`), ...said].join(' · ')}</p>
      ${asides(s).map((x) => html`<p class="quiet">${x}</p>`)}
    </dd>
    ${
      s.note
        ? html`<dt>${t('session.note')}</dt>
            <dd>${note(s.note)}</dd>`
        : nothing
    }
  </dl>`;
}

const tally = ({ rule, found: n, missed }: Tally) => [
  ruleName(rule),
  ' · ',
  n + missed ? t('record.found', { n, of: n + missed }) : t('session.unsaid'),
];

/** What is worth saying of few sessions. */
const asides = (s: Entry): string[] =>
  [
    s.looked === undefined ? '' : t('session.looked', { n: s.looked }),
    s.extra ? t('session.extra', { n: s.extra }) : '',
    s.helped ? t('session.helped') : '',
    s.updated ? t('session.updated', { day: dayName(today(new Date(s.updated))) }) : '',
  ].filter(Boolean);

const buttons = (s: State, x: Entry) => html`
  <div class="row no-print">
    <a class="button big" href=${editHash(x.id)} data-t="correct">${t('session.correct')}</a>
    <button class="big" data-t="remove-session" @click=${() => void removeThis(x)}>
      ${t('record.remove')}
    </button>
    <a class="button plain" href=${entryHash(s.catalogue, x)} data-t="again"
      >${t('session.again')}</a
    >
  </div>
`;

/** Back to the whole record, which has the session no more. */
async function removeThis({ id }: Entry) {
  if (await remove(id)) location.replace('#/record');
}
