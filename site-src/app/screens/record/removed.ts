// The sessions that were removed, folded at the foot of the record: each can be brought back, or
// removed for good after a second look.
import { html, nothing } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import { bringBack, forget, readRemoved } from '../../actions/sessions.ts';
import { dayName, t } from '../../i18n.ts';
import { sameItems } from '../../memo.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Gone, Learner, Session } from '../../types.ts';
import type { Removed } from './kept.ts';
import { summary } from './row.ts';

/** Removed sessions shown before the rest is asked for. */
const FEW = 20;

const change = (patch: Partial<Removed>) => {
  const { removed } = state.get();
  if (removed) state.set({ removed: { ...removed, ...patch } });
};

/** What the list was last read for. */
let readFor: unknown[] = [];

/** Reads the list, and reads it anew when the record has changed. */
export function followRemoved(s: State) {
  const l = state.learner(s);
  const now = [l?.id, s.sessions];
  if (!l || sameItems(now, readFor)) return;
  readFor = now;
  void readRemoved(l.id);
}

export function removed(s: State, l: Learner | undefined) {
  const r = s.removed;
  if (!l || r?.learner !== l.id || !r.list.length) return nothing;
  const listed = r.listed || FEW;
  const ids = r.list.map((x) => x.id);
  return html`
    <details class="opens removed no-print" data-t="removed">
      <summary><h2>${t('removed.title', { n: r.list.length })}</h2></summary>
      <p class="quiet">${t('removed.what')}</p>
      <ul class="sessions">
        ${repeat(
          r.list.slice(0, listed),
          (x) => x.id,
          (x) => row(r, x),
        )}
      </ul>
      ${ids.length > listed ? more(ids.length, listed) : nothing}
      ${r.asked && r.asked.length > 1 ? sure(r) : all(ids)}
    </details>
  `;
}

const more = (of: number, n: number) => html`
  <button class="plain" data-t="more-removed" @click=${() => change({ listed: n + FEW })}>
    ${t('record.more', { n: of - n })}
  </button>
`;

const all = (ids: string[]) =>
  ids.length > 1
    ? html`<p>
        <button class="plain" data-t="forget-all" @click=${() => change({ asked: ids })}>
          ${t('removed.forget-all')}
        </button>
      </p>`
    : nothing;

function row(r: Removed, { id, session }: Gone) {
  const s = session!;
  const asked = r.asked?.length === 1 && r.asked[0] === id;
  return html`<li data-t="removed-session">
    <div>
      <p class="quiet">${dayName(s.day)}</p>
      ${summary(s)}${asked ? sure(r) : nothing}
    </div>
    ${asked ? nothing : buttons(s)}
  </li>`;
}

const buttons = ({ id, day }: Session) => html`
  <div class="row-buttons">
    <button
      class="plain"
      data-t="bring-back"
      aria-label=${t('removed.back-this', { day: dayName(day) })}
      @click=${() => void bringBack(id)}
    >
      ${t('removed.back')}
    </button>
    <button
      class="plain"
      data-t="forget"
      data-next="[data-t=forget-keep]"
      aria-label=${t('removed.forget-this', { day: dayName(day) })}
      @click=${() => change({ asked: [id] })}
    >
      ${t('removed.forget')}
    </button>
  </div>
`;

/** The second look. */
function sure({ asked = [], learner }: Removed) {
  return html`<div class="sure" role="alert" data-t="sure">
    <p>${t('removed.sure', { n: asked.length })}</p>
    <div class="row">
      <button class="big" data-t="forget-keep" @click=${() => change({ asked: undefined })}>
        ${t('removed.keep')}
      </button>
      <button class="plain" data-t="forget-sure" @click=${() => void gone(asked, learner)}>
        ${t('removed.forget')}
      </button>
    </div>
  </div>`;
}

async function gone(ids: string[], learner: string) {
  await forget(ids, learner);
  change({ asked: undefined });
}
