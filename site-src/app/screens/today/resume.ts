// Sessions that were left can be taken up again: the newest at once, the others below it.
import * as state from '../../state.ts';
import { h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { keep } from '../../actions/keep.ts';
import { drafts, dropDraft, saveDraft } from '../../store/store.ts';
import { linesName } from '../../text/names.ts';
import type { Draft, Learner } from '../../types.ts';

const name = (d: Draft) => linesName(state.get().catalogue.surahs, d.lines.from, d.lines.to);

/** What the learner has left, if anything. */
export async function resume(l: Learner): Promise<HTMLElement | undefined> {
  // Lines that were opened, or marked and cleared, are nothing to go on with.
  const begun = (d: Draft) =>
    d.marks.length > 0 || d.stops.length > 0 || d.phase !== (d.lines.rule ? 'find' : 'read');
  const [first, ...others] = (await drafts(l.id).catch(() => [])).filter(begun);
  return (
    first &&
    h(
      'section',
      { class: 'resume' },
      h(
        'p',
        {},
        h(
          'a',
          { href: first.at, 'data-t': 'resume' },
          t(`today.resume.${first.phase}`, { lines: name(first) }),
        ),
      ),
      others.length > 0 &&
        h(
          'details',
          { class: 'opens', 'data-t': 'resume-others' },
          h('summary', {}, t('today.resume-others', { n: others.length })),
          h('ul', { class: 'sessions' }, others.map(row)),
        ),
    )
  );
}

function row(d: Draft): HTMLElement {
  const rule = state.get().catalogue.rules.find((r) => r.id === d.lines.rule);
  return h(
    'li',
    {},
    h(
      'p',
      {},
      h('a', { href: d.at, 'data-t': 'resume-other' }, name(d)),
      rule && ` · ${rule.name}`,
    ),
    h(
      'button',
      {
        class: 'plain',
        'data-t': 'drop-draft',
        'aria-label': t('today.drop-this', { lines: name(d) }),
        onclick: () => void drop(d),
      },
      t('record.remove'),
    ),
  );
}

async function drop(d: Draft) {
  const again = () => state.set({ drafts: state.get().drafts + 1 });
  if (!(await keep(() => dropDraft(d)))) return;
  again();
  state.set({
    notice: {
      text: t('today.dropped'),
      action: { label: t('undo'), run: () => void keep(() => saveDraft(d)).then(again) },
    },
  });
}
