// The record: all of it, one session of it, or the form for one.
import '../../later.ts';
import { html } from 'lit-html';
import { t } from '../../i18n.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { linesName } from '../../text/names.ts';
import type { Route } from '../../types.ts';
import { closed } from '../parts/closed.ts';
import type { Screen } from '../screen.ts';
import { beginDrafts, beginForm, formOf } from './edit.ts';
import { form } from './form.ts';
import { list, PAGE } from './list.ts';
import { leaveMarks, paintMarks } from './marks.ts';
import { entryOf, opened, readOpened } from './opened.ts';
import { printing } from './print.ts';
import { followRemoved } from './removed.ts';

const at = (r: Route) => (r.name === 'record' ? r : { name: 'record' as const });

const view = (s: State) => html`
  <main class="record">${s.closed ? closed(s.closed) : content(s)}</main>
`;

function content(s: State) {
  const { session, edit } = at(s.route);
  if (edit) return form(s, session);
  return session ? opened(s, session) : list(s);
}

function title(s: State) {
  const { session, edit } = at(s.route);
  if (edit) return t(session ? 'edit.title' : 'record.add');
  const entry = session && entryOf(s, session);
  return entry ? linesName(s.catalogue.surahs, entry.from, entry.to) : t('nav.record');
}

export const record: Screen = {
  title,
  view,
  enter(r) {
    const { edit, session } = at(r);
    state.set({ listed: PAGE });
    if (edit) void beginForm(session);
    else beginDrafts();
    printing(true);
  },
  drawn(s) {
    if (s.closed) return;
    const { session, edit } = at(s.route);
    if (edit && !formOf(s, session)) void beginForm(session);
    if (session && !edit) {
      void readOpened(session);
      paintMarks(s);
    }
    if (!session && !edit) followRemoved(s);
  },
  leave() {
    leaveMarks();
    printing(false);
  },
};
