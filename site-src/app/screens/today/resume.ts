// Sessions that were left can be taken up again: the newest at once, the others below it.
import { html, nothing } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import { keep } from '../../actions/keep.ts';
import { offerUndo } from '../../actions/undo.ts';
import { t } from '../../i18n.ts';
import { firstStep } from '../../marking/pencils.ts';
import { linesHash } from '../../share/link.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { drafts, dropDraft, saveDraft } from '../../store/store.ts';
import { linesName } from '../../text/names.ts';
import type { Draft, Learner } from '../../types.ts';

const nameOf = (d: Draft) => linesName(state.get().catalogue.surahs, d.lines.from, d.lines.to);

/** Lines that were opened, or marked and cleared, are nothing to go on with. */
const begun = (d: Draft) =>
  d.marks.length > 0 || d.stops.length > 0 || d.phase !== firstStep(d.lines);

let asked = 0;

/** Reads what the learner has left. */
export async function readLeft(l: Learner | undefined) {
  const mine = ++asked;
  const left = l ? (await drafts(l.id).catch(() => [])).filter(begun) : [];
  if (mine === asked && (left.length || state.get().unfinished.length))
    state.set({ unfinished: left });
}

/** What the learner has left, if anything. */
export function resume(s: State, l: Learner) {
  const [first, ...others] = s.unfinished.filter((d) => d.learner === l.id);
  if (!first) return nothing;
  return html`
    <section class="resume">
      <p>
        <a href=${linesHash(first.lines)} data-t="resume"
          >${t(`today.resume.${first.phase}`, { lines: nameOf(first) })}</a
        >
      </p>
      ${others.length ? more(others) : nothing}
    </section>
  `;
}

const more = (others: Draft[]) => html`
  <details class="opens" data-t="resume-others">
    <summary>${t('today.resume-others', { n: others.length })}</summary>
    <ul class="sessions">
      ${repeat(others, (d) => d.id, row)}
    </ul>
  </details>
`;

function row(d: Draft) {
  const rule = state.get().catalogue.rules.find((r) => r.id === d.lines.rule);
  return html`<li>
    <p>
      <a href=${linesHash(d.lines)} data-t="resume-other">${nameOf(d)}</a
      >${rule ? ` · ${rule.name}` : nothing}
    </p>
    <button
      class="plain"
      data-t="drop-draft"
      aria-label=${t('today.drop-this', { lines: nameOf(d) })}
      @click=${() => void drop(d)}
    >
      ${t('record.remove')}
    </button>
  </li>`;
}

async function drop(d: Draft) {
  const changed = () => state.set({ draftWrites: state.get().draftWrites + 1 });
  if (!(await keep(() => dropDraft(d)))) return;
  changed();
  offerUndo(t('today.dropped'), () => keep(() => saveDraft(d)).then(changed));
}
