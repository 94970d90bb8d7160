// The form for a session, as it is begun, changed, kept and left. What is typed stays until it is
// saved or discarded, wherever one goes meanwhile.
import { html } from 'lit-html';
import { add, correct } from '../../actions/sessions.ts';
import { offerUndo } from '../../actions/undo.ts';
import { dayName, t } from '../../i18n.ts';
import { added } from '../../record/correct.ts';
import { read, type Typed, typedOf } from '../../record/typed.ts';
import { today } from '../../record/week.ts';
import { editHash, sessionHash } from '../../share/link.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { newId } from '../../store/id.ts';
import { session } from '../../store/snapshot.ts';
import type { Learner } from '../../types.ts';
import { draftKeys, forgetDraft, keepDraft, keptDraft } from './draft.ts';
import type { Form } from './kept.ts';
import { entryOf } from './opened.ts';

/** Under what a form is kept: the session's id, or that of the learner who gets a new one. */
const keyOf = (s: State, id: string | undefined) => id ?? `add ${state.learner(s)?.id ?? ''}`;

export const formOf = (s: State, id: string | undefined): Form | undefined => s.forms[keyOf(s, id)];

function put(key: string, form: Form | undefined) {
  const { [key]: _, ...others } = state.get().forms;
  state.set({ forms: form ? { ...others, [key]: form } : others });
  if (form?.touched) keepDraft(key, form);
  else forgetDraft(key);
}

/** A session to be added: today, at the learner's place. */
function empty({ place: { s, a } }: Learner): Typed {
  return {
    day: today(),
    from: { s, a: String(a) },
    to: { s, a: String(a) },
    rules: [],
    outcome: '',
    paper: true,
    minutes: '',
    note: '',
  };
}

/** Forms that are being begun, by their keys. */
const beginning = new Set<string>();

/** Begins the form of an address, or takes it up as it was left. */
export async function beginForm(id: string | undefined) {
  const s = state.get();
  const key = keyOf(s, id);
  if (s.closed || s.forms[key]?.touched || beginning.has(key)) return;
  beginning.add(key);
  const form = await fresh(s, id).catch(() => undefined);
  beginning.delete(key);
  if (state.get().forms[key]?.touched) return;
  if (form) put(key, { ...form, ...keptDraft(key) });
  else if (id !== undefined && entryOf(s, id) && location.hash === editHash(id))
    location.replace(sessionHash(id)); // it says why
}

async function fresh(s: State, id: string | undefined): Promise<Form | undefined> {
  const none = { problems: [], touched: false };
  const l = state.learner(s);
  if (id === undefined) return l && { learner: l.id, typed: empty(l), was: undefined, ...none };
  if (!entryOf(s, id)) return undefined;
  const was = await session(id);
  return was && { learner: was.learner, typed: typedOf(was), was, ...none };
}

/** Takes up what was typed before the page was loaded. */
export const beginDrafts = () =>
  draftKeys().forEach((key) => void beginForm(key.startsWith('add ') ? undefined : key));

/** Changes what is typed. */
export function change(id: string | undefined, patch: Partial<Typed>) {
  const form = formOf(state.get(), id);
  if (!form) return;
  const typed = { ...form.typed, ...patch };
  put(keyOf(state.get(), id), { ...form, typed, touched: true });
}

/** Forms that are being saved, by their keys: a second press saves nothing twice. */
const saving = new Set<string>();

/** Keeps the session as the form says it, or says what is wrong with the form. */
export async function save(id: string | undefined) {
  const form = formOf(state.get(), id);
  const key = keyOf(state.get(), id);
  if (!form || saving.has(key)) return;
  const said = read(state.get().catalogue, form.typed, form.was, today());
  if (Array.isArray(said)) {
    put(key, { ...form, problems: said, touched: true });
    return setTimeout(() => document.querySelector<HTMLElement>('[aria-invalid=true]')?.focus());
  }
  saving.add(key);
  const made = form.was ? undefined : added(newId(), form.learner, said);
  const kept = await (made ? add(made) : correct(form.was!, said));
  if (kept) location.replace(sessionHash(made?.id ?? id!));
  // Once the form is left.
  setTimeout(() => {
    saving.delete(key);
    if (kept) put(key, undefined);
  });
}

/** Leaves a form without keeping what was typed, with a way back. */
export function leave(id: string | undefined) {
  location.hash = id === undefined ? '#/record' : sessionHash(id);
  discard(id);
}

function discard(id: string | undefined) {
  const key = keyOf(state.get(), id);
  const form = formOf(state.get(), id);
  put(key, undefined);
  if (!form?.touched) return;
  const back = () => {
    put(key, form);
    location.hash = editHash(id);
  };
  offerUndo(t('edit.discarded'), back, { name: 'discarded' });
}

/** What was begun in a form and not saved. */
export function unfinished(s: State) {
  const l = state.learner(s);
  const list = Object.entries(s.forms).filter(([, f]) => f.touched && f.learner === l?.id);
  return list.map(([key, form]) => {
    const id = form.was ? key : undefined;
    const what = form.was
      ? t('record.unfinished-edit', { day: dayName(form.was.day) })
      : t('record.unfinished-add');
    return html`<section class="card no-print" data-t="unfinished">
      <p>${t('record.unfinished', { what })}</p>
      <a class="button big" href=${editHash(id)} data-t="go-on">${t('record.go-on')}</a>
      <button class="plain" data-t="drop-form" @click=${() => discard(id)}>
        ${t('edit.discard')}
      </button>
    </section>`;
  });
}
