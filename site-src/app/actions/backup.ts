// Saves the record to a file, hands it over, and reads such a file back after a look.
import '../later.ts';
import { t } from '../i18n.ts';
import { BackupError, parse, write } from '../record/backup.ts';
import { LARGEST } from '../record/largest.ts';
import { changes, ofLearners, preview, revived, type Row } from '../record/preview.ts';
import { today } from '../record/week.ts';
import * as state from '../state.ts';
import * as store from '../store/snapshot.ts';
import { tellDamaged } from '../store/store.ts';
import { hand } from './hand.ts';
import { follow, keep } from './keep.ts';
import { changeSettings } from './settings.ts';

/** A file that was read, what it would do, and what was chosen of it. */
export interface Reading {
  file: store.Whole;
  mine: store.Whole;
  rows: Row[];
  /** The learners whose records are taken. */
  ids: Set<string>;
  /** Whether sessions that were removed here come back. */
  back: boolean;
}

/** Hands the record over as a file to be saved. */
export async function save() {
  try {
    const k = await store.whole();
    download(write(k, new Date().toISOString()));
    state.set({ notice: { text: t('backup.saved') } });
    await noteBackup(k);
  } catch {
    state.set({ notice: { text: t('backup.not-saved'), hold: true } });
  }
}

/** Hands the record of one learner over by the system's share sheet; without one, as a file. */
export async function give(learner: string) {
  try {
    const k = ofLearners(await store.whole(), new Set([learner]));
    const text = write({ ...k, damaged: [] }, new Date().toISOString());
    const file = shareable(text);
    if (file) await navigator.share({ files: [file] });
    else {
      download(text);
      state.set({ notice: { text: t('backup.give-file'), hold: true } });
    }
  } catch (e) {
    if ((e as DOMException | undefined)?.name === 'AbortError') return; // thought better of it
    state.set({ notice: { text: t('backup.not-saved'), hold: true } });
  }
}

const nameOf = (ending: string) => `sutur-${today()}.${ending}`;

/** The file in a form that the share sheet takes: some take no JSON, but text. */
function shareable(text: string): File | undefined {
  const forms = [
    new File([text], nameOf('json'), { type: 'application/json' }),
    new File([text], nameOf('txt'), { type: 'text/plain' }),
  ];
  return forms.find((file) => navigator.canShare?.({ files: [file] }));
}

const download = (text: string) => hand(text, nameOf('json'), 'application/json');

async function noteBackup(k: store.Whole) {
  void changeSettings({ backed: new Date().toISOString() });
  if (k.damaged.length !== state.get().damaged) await follow(['learners', 'sessions', 'taught']);
}

/** Reads a backup file and shows what it would do. */
export async function restore(f: File) {
  try {
    if (f.size > LARGEST) throw new BackupError('big');
    const file = parse(await f.text());
    await show(file);
  } catch (e) {
    if (!(e instanceof BackupError)) return state.set({ kept: false });
    const text = t(`backup.${e.code}`, { file: f.name, where: e.where });
    state.set({ notice: { text, hold: true, name: 'refused' } });
  }
}

async function show(file: store.Whole) {
  const mine = await store.whole();
  const { rows, damaged } = preview(mine, file);
  const open = rows.filter((row) => changes(row) || row.removedHere > 0);
  if (!open.length && !damaged) return told(t('backup.nothing'), file);
  const ids = new Set(rows.map((row) => row.learner.id));
  state.set({ reading: { file, mine, rows, ids, back: false } });
}

/** Changes what is chosen of the file. */
export function choose(patch: Partial<Pick<Reading, 'ids' | 'back'>>) {
  const { reading } = state.get();
  if (reading) state.set({ reading: { ...reading, ...patch } });
}

/** Takes what was chosen of the file into the record. */
export async function accept() {
  const { reading } = state.get();
  if (!reading) return;
  state.set({ reading: undefined });
  const { file, mine, ids, back } = reading;
  const wanted = ofLearners(file, ids);
  const other = back ? revived(mine, wanted, new Date().toISOString()) : wanted;
  const before = state.get().sessions.length;
  if (!(await keep(() => store.take(other)))) return;
  await follow(['learners', 'sessions', 'taught']);
  if (file.damaged.length) report();
  told(t('backup.restored', { n: Math.max(0, state.get().sessions.length - before) }), file);
}

/** Says how reading went, and what was damaged in the file. */
function told(text: string, { damaged }: store.Whole) {
  const n = damaged.length;
  const all = n ? `${text} ${t('backup.odd', { n })}` : text;
  state.set({ notice: { text: all, hold: n > 0, name: 'restored' } });
}

/** What a file brought is told of when it is read. */
function report() {
  const { damaged } = state.get();
  state.set({ reported: damaged });
  tellDamaged(damaged).catch(() => undefined);
}
