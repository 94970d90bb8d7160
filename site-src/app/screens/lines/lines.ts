// The lines: find, check, read, done.
import '../../later.ts';
import { html, nothing } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';
import { t } from '../../i18n.ts';
import { STOPS } from '../../marking/pencils.ts';
import { adopt, flush, flushLast } from '../../practice/keeping.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { linesName } from '../../text/names.ts';
import type { Lines, Route } from '../../types.ts';
import { unread } from '../parts/unread.ts';
import type { Screen } from '../screen.ts';
import { ahead } from './ahead.ts';
import { answer, summary } from './answer.ts';
import { bar } from './bar.ts';
import { drawer } from './drawer.ts';
import { end } from './end.ts';
import { elsewhere } from './elsewhere.ts';
import { escape } from './escape.ts';
import { fromUnder } from './foot.ts';
import { letter, letterDrawn } from './letter.ts';
import { menu } from './menu.ts';
import { close, open } from './open.ts';
import { undo } from './say.ts';
import { leaveSheet, paintLines } from './sheet.ts';
import { sheetOf } from './text.ts';
import { whose } from './whose.ts';
import { openWord } from './word.ts';

const linesOf = (r: Route): Lines | undefined => (r.name === 'lines' ? r.lines : undefined);

function title(s: State): string {
  const l = linesOf(s.route);
  return l ? linesName(s.catalogue.surahs, l.from, l.to) : '';
}

function view(s: State) {
  const p = s.practice;
  const ready = p && !p.opening;
  return html`
    <main class="lines" data-phase=${p?.draft.phase ?? ''}>
      <header class="row">
        <a class="button plain" href="#/${s.home}" data-t="back">${t(`nav.${s.home}`)}</a>
        <div class="title">
          <h1 tabindex="-1">${title(s)}</h1>
          ${whose(s)}
        </div>
        ${menu(s, linesOf(s.route)!)}
      </header>
      <p class="task" tabindex="-1" data-t="task">${p ? task(p) : nothing}</p>
      <div class="hold" ?hidden=${p?.draft.phase === 'done'}>
        ${p ? sheetOf(p) : unread(s.unreadable)}
      </div>
      <div class="after">${ready ? after(p) : nothing}</div>
      <div class="thumb" @focusin=${fromUnder}>${ready ? below(p) : nothing}</div>
      <p class="hidden" aria-live="assertive" aria-atomic="true" data-t="speech">
        ${keyed(p?.say, p?.say ?? '')}
      </p>
      <p class="hidden" id="keys-help">${t('drawer.keys')}</p>
    </main>
  `;
}

const below = (p: Practice) => (p.elsewhere ? elsewhere() : [letter(p), bar(p), drawer(p)]);

function task(p: Practice): string {
  const { phase } = p.draft;
  if (p.ask) return t('lines.asking');
  if (phase === 'check') return summary(p);
  if (phase !== 'find') return t(`lines.task.${p.pencils.length ? '' : 'plain-'}${phase}`);
  const hand = practice.inHand(p);
  return hand?.id === STOPS
    ? t('lines.task.stops')
    : t('lines.task.find', { rule: hand?.name ?? '' });
}

function after(p: Practice) {
  if (p.draft.phase === 'done') return end(p);
  return p.draft.phase === 'check' ? answer(p) : nothing;
}

function onKey(e: KeyboardEvent) {
  if (e.key === 'Escape' && escape()) e.preventDefault();
  if (!(e.ctrlKey || e.metaKey) || e.shiftKey || e.key.toLowerCase() !== 'z') return;
  if (practice.get()?.draft.phase !== 'find') return;
  e.preventDefault();
  undo();
}

const hidden = () => {
  if (document.hidden) flush();
};

/**
 * What is scrolled into view, or comes into focus, does not lie under the controls, and a notice
 * lies above them.
 */
const thumb = new ResizeObserver(([e]) => {
  const height = e!.borderBoxSize[0]!.blockSize;
  setTimeout(() => document.documentElement.style.setProperty('--thumb', `${height + 8}px`));
});

/** The number of writes by other tabs that the lines have followed. */
let followed = 0;

export const lines: Screen = {
  title,
  view,
  ahead: (r) => ahead(view, linesOf(r)!),
  enter(r) {
    followed = state.get().draftWrites;
    addEventListener('keydown', onKey);
    addEventListener('pagehide', flushLast);
    document.addEventListener('visibilitychange', hidden);
    void open(linesOf(r)!);
  },
  drawn(s) {
    const p = s.practice;
    if (!p) return;
    thumb.observe(document.querySelector('.thumb')!);
    if (s.draftWrites !== followed) void adopt();
    followed = s.draftWrites;
    openWord(p);
    letterDrawn(p);
    paintLines(); // last, because it measures: the browser then lays the screen out once
  },
  leave() {
    removeEventListener('keydown', onKey);
    removeEventListener('pagehide', flushLast);
    document.removeEventListener('visibilitychange', hidden);
    close();
    leaveSheet();
    thumb.disconnect();
    state.set({ unreadable: undefined });
    setTimeout(() => document.documentElement.style.removeProperty('--thumb'));
  },
};
