// The print screen: what to print on one side, how it will look on the other, and the browser's own
// print.
import * as state from '../../state.ts';
import { whenCalm } from '../../calm.ts';
import { h, refill } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { panel } from '../../colour/panel.ts';
import { apply } from '../../colour/pencils.ts';
import { learnt } from '../../print/learnt.ts';
import { defaults } from '../../print/defaults.ts';
import { format, type Options, parse, type Problem } from '../../print/options.ts';
import { MOST, span } from '../../print/passage.ts';
import { TextError, verses } from '../../text/data.ts';
import { linesName } from '../../text/names.ts';
import type { View } from '../view.ts';
import { card } from './card.ts';
import { form } from './form.ts';
import { Ink } from './ink.ts';
import { record } from './record.ts';
import { sheets } from './sheets.ts';
import { Stage } from './stage.ts';

export function print(): View {
  const c = state.get().catalogue,
    stage = new Stage();
  const fields = h('form', {
    class: 'card print-form',
    onsubmit: (e: Event) => e.preventDefault(),
  });
  const status = h('p', { class: 'print-status', role: 'status', 'data-t': 'print-status' }),
    problem = h('p', { class: 'problem', role: 'alert', 'data-t': 'problem' });
  const go = h(
    'button',
    {
      class: 'main',
      type: 'button',
      disabled: true,
      'data-t': 'print-now',
      onclick: () => window.print(),
    },
    t('print.now'),
  );
  const node = h(
    'main',
    { class: 'print' },
    h(
      'div',
      { class: 'print-side' },
      h('h1', { tabindex: '-1' }, t('print.title')),
      problem,
      fields,
      h('p', { class: 'quiet' }, t('print.respect')),
    ),
    h('div', { class: 'print-go' }, status, go),
    stage.el,
  );
  apply(c, state.get().settings.pencils);
  let options: Options,
    turn = 0,
    timer = 0,
    read = '';

  const tell = (p: Problem | undefined) => {
    problem.textContent = p ? t(p.key, p.vars) : '';
  };
  const box = h(
    'details',
    { 'data-t': 'print-pencils' },
    h('summary', {}, t('pencils.title')),
    panel(),
  );
  const draw = () => refill(fields, form(options, set), box);
  const wait = (ms: number) => {
    clearTimeout(timer);
    timer = window.setTimeout(() => void build(), ms);
  };

  function set(patch: Partial<Options>) {
    options = { ...options, ...patch };
    read = format(c, options);
    history.replaceState(history.state, '', read);
    tell(undefined);
    whenCalm(draw);
    wait('size' in patch ? 150 : 0);
  }

  async function build() {
    const mine = ++turn,
      o = options,
      n = span(c, o.from, o.to),
      lines = o.kind !== 'card' && o.kind !== 'record';
    if (lines && n > MOST) {
      fail(t('print.bad.many', { n, most: MOST }));
      return;
    }
    status.textContent = t('print.laying-out');
    go.disabled = true;
    await new Promise((f) => setTimeout(f, 20)); // so that the words above are seen before the work
    const next = new Ink(),
      s = state.get(),
      child = state.learner()?.name ?? '';
    try {
      const leaves = await stage.measured(o, async (box) => {
        if (o.kind === 'record') return record(c, o, child, box);
        if (o.kind === 'card')
          return card({ c, rules: learnt(), options: o, settings: s.settings, child }, box, next);
        const [vs, first] = await Promise.all([
          verses(c, o.from, o.to),
          verses(c, { s: 1, a: 1 }, { s: 1, a: 1 }),
        ]);
        return sheets(
          {
            c,
            verses: vs,
            basmala: first[0]!.text,
            options: o,
            taught: new Set(learnt().map((r) => r.id)),
            settings: s.settings,
            child,
          },
          box,
          next,
        );
      });
      if (mine !== turn) return;
      stage.show(o, leaves);
      next.show();
      const name = lines
        ? `${linesName(c.surahs, o.from, o.to)} ${t(`print.kind.${o.kind}`)}`
        : t(`print.kind.${o.kind}`);
      document.title = t('page.title', { screen: name });
      status.textContent = [
        t('print.pages', { n: leaves.length }),
        o.kind === 'card' && (learnt().length ? t('print.card-fold') : t('print.card-empty')),
      ]
        .filter(Boolean)
        .join(' ');
      go.disabled = false;
    } catch (e) {
      if (mine !== turn) return;
      if (!(e instanceof TextError)) throw e;
      fail(t(`error.${e.code}`));
    }
  }

  function fail(words: string) {
    stage.clear();
    Ink.clear();
    status.textContent = '';
    go.disabled = true;
    problem.textContent = words;
  }

  const update = () => {
    if (location.hash === read) return;
    read = location.hash;
    const p = parse(c, read, defaults());
    options = p.options;
    tell(p.problem);
    draw();
    wait(0);
  };
  update();
  return {
    node,
    title: t('print.title'),
    update,
    leave: () => {
      clearTimeout(timer);
      turn++;
      Ink.clear();
      stage.leave();
    },
  };
}
