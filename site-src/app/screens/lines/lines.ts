// The lines: find, check, read, done. The text is laid once; everything around it is drawn again
// from the state.
import * as state from '../../state.ts';
import * as store from '../../store/store.ts';
import { h, refill } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { unpaint } from '../../marking/paint.ts';
import { reopen, wayOut } from '../../offline/tools.ts';
import { load } from '../../plan/held.ts';
import { linesHash } from '../../share/link.ts';
import { basmala, TextError, verses } from '../../text/data.ts';
import { linesName } from '../../text/names.ts';
import type { Lines } from '../../types.ts';
import type { View } from '../view.ts';
import { bar } from './bar.ts';
import { drawer } from './drawer.ts';
import { end } from './end.ts';
import { letter } from './letter.ts';
import * as live from './live.ts';
import { menu } from './menu.ts';
import { type Passage, passage } from './passage.ts';
import { summary, told } from './told.ts';

export function lines(want: Lines): View {
  const c = state.get().catalogue,
    name = linesName(c.surahs, want.from, want.to);
  const part = (cls: string) => h('div', { class: cls });
  const task = h('p', { class: 'task', tabindex: '-1', 'data-t': 'task' }),
    after = part('after'),
    foot = part('bar'),
    help = part('drawer');
  const panel = h('section', {
    class: 'panel',
    hidden: true,
    'aria-live': 'polite',
    'data-t': 'letter',
  });
  const speech = h('p', { class: 'hidden', 'aria-live': 'assertive', 'data-t': 'speech' });
  const hold = h('div', { class: 'hold' }, h('p', { class: 'quiet' }, t('lines.loading')));
  const thumb = h('div', { class: 'thumb' }, panel, foot, help),
    root = document.documentElement;
  const node = h(
    'main',
    { class: 'lines', 'data-phase': '' },
    h(
      'header',
      { class: 'row' },
      h('a', { class: 'button plain', href: '#/today', 'data-t': 'back' }, t('lines.back')),
      h('h1', { tabindex: '-1' }, name),
      menu(want),
    ),
    task,
    hold,
    after,
    thumb,
    speech,
    h('p', { class: 'hidden', id: 'keys-help' }, t('drawer.keys')),
  );
  let sheet: Passage | undefined,
    gone = false,
    checked: unknown[] = [],
    heard = state.get().drafts;

  // What is scrolled into view, or comes into focus, does not lie under the controls, and a notice
  // lies above them.
  const height = new ResizeObserver(([e]) =>
    setTimeout(() => {
      if (!gone) root.style.setProperty('--thumb', `${e!.borderBoxSize[0]!.blockSize + 8}px`);
    }),
  );
  height.observe(thumb);

  const head = (l: live.Live) => {
    const { phase } = l.draft;
    node.dataset.phase = phase;
    const line = l.ask
      ? t('lines.asking')
      : phase === 'check'
        ? summary(l)
        : t(l.rule || phase === 'find' ? `lines.task.${phase}` : `lines.task.plain-${phase}`, {
            rule: l.rule?.name ?? '',
          });
    if (task.textContent !== line) task.textContent = line;
  };

  const update = () => {
    const l = live.get();
    if (!l || !sheet || gone) return;
    const { phase } = l.draft;
    if (heard !== (heard = state.get().drafts)) void live.adopt();
    head(l);
    hold.hidden = phase === 'done';
    // What was opened in the lists stays open as long as they say the same.
    const now = phase === 'check' ? [l.draft.marks, l.draft.stops, state.get().settings] : [];
    if (phase === 'done') refill(after, end(l));
    else if (phase !== 'check') after.replaceChildren();
    else if (now.some((x, i) => x !== checked[i])) refill(after, ...told(l));
    checked = now;
    letter(panel);
    bar(foot);
    drawer(help);
    sheet.update(); // last, because it measures: the browser then lays the screen out once
    if (l.say && speech.textContent !== l.say) speech.textContent = l.say;
  };

  const undo = (e: KeyboardEvent) => {
    if (
      (e.ctrlKey || e.metaKey) &&
      !e.shiftKey &&
      e.key.toLowerCase() === 'z' &&
      live.get()?.draft.phase === 'find'
    ) {
      e.preventDefault();
      live.undo();
    }
  };

  void (async () => {
    const who = state.learner()?.id ?? '';
    try {
      const [vs, first, kept] = await Promise.all([
        verses(c, want.from, want.to),
        basmala(c, want.from, want.to),
        who ? store.draft(who, linesHash(want)).catch(() => undefined) : undefined,
      ]);
      if (gone) return;
      const l = live.begin(c, vs, kept ? live.fitted(kept, vs) : live.fresh(who, want));
      sheet = passage(l, first);
      live.onChange(update);
      hold.replaceChildren(sheet.el);
      addEventListener('keydown', undo);
      // The letters first; what is around them a moment later.
      head(l);
      requestAnimationFrame(() => setTimeout(update));
      setTimeout(() => {
        if (!gone) load().catch(() => undefined);
      }, 2000); // for the place after the session, which can do without
    } catch (e) {
      if (!(e instanceof TextError)) throw e;
      hold.replaceChildren(
        h(
          'div',
          { class: 'card', role: 'alert', 'data-t': 'text-error' },
          h('p', {}, t(`error.${e.code}`)),
          h('button', { class: 'main', onclick: reopen }, t('error.again')),
          wayOut(),
        ),
      );
    }
  })();

  return {
    node,
    title: name,
    update,
    leave: () => {
      gone = true;
      removeEventListener('keydown', undo);
      live.leave();
      unpaint();
      height.disconnect();
      root.style.removeProperty('--thumb');
    },
  };
}
