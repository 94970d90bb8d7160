// Saves the record to a file and reads such a file back.
import { t } from '../i18n.ts';
import { additions, BackupError, LARGEST, parse, write } from '../record/backup.ts';
import { today } from '../record/week.ts';
import * as state from '../state.ts';
import { tellDamaged } from '../store/store.ts';
import * as store from '../store/snapshot.ts';
import { follow, keep } from './keep.ts';

/** How long (ms) a file can be fetched after it has been handed over. */
const HELD = 60_000;

/** Hands the record over as a file. */
export async function save() {
  try {
    const k = await store.whole();
    hand(write(k, new Date().toISOString()), `sutur-${today()}.json`);
    state.set({ notice: { text: t('backup.saved') } });
    if (k.damaged.length !== state.get().damaged) await follow(['learners', 'sessions', 'taught']);
  } catch {
    state.set({ notice: { text: t('backup.not-saved'), hold: true } });
  }
}

function hand(text: string, name: string) {
  const url = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), HELD);
}

/** Adds what a backup file has and the record has not. */
export async function restore(f: File) {
  try {
    await read(f);
  } catch (e) {
    if (!(e instanceof BackupError)) return state.set({ kept: false });
    const text = t(`backup.${e.code}`, { file: f.name, where: e.where });
    state.set({ notice: { text, hold: true, name: 'refused' } });
  }
}

async function read(f: File) {
  if (f.size > LARGEST) throw new BackupError('big');
  const file = parse(await f.text());
  const add = additions(await store.whole(), file);
  const n = add.sessions.length;
  const more = n + add.learners.length + add.taught.length;
  if ((more || add.damaged.length) && !(await keep(() => store.merge(add)))) return;
  if (add.damaged.length) report(add.damaged.length);
  const odd = file.damaged.length;
  const text = t(more ? 'backup.restored' : 'backup.nothing', { n });
  state.set({
    notice: {
      text: odd ? `${text} ${t('backup.odd', { n: odd })}` : text,
      hold: odd > 0,
      name: 'restored',
    },
  });
}

/** What a file brought is told of when it is read. */
function report(n: number) {
  const all = state.get().reported + n;
  state.set({ reported: all });
  tellDamaged(all).catch(() => undefined);
}
