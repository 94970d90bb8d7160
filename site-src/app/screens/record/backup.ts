// Saves the record to a file and reads such a file back.
import * as state from '../../state.ts';
import * as store from '../../store/whole.ts';
import { tellDamaged } from '../../store/store.ts';
import { h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { additions, BackupError, LARGEST, parse, write } from '../../record/backup.ts';
import { follow, keep } from '../../actions/keep.ts';
import { today } from '../../record/week.ts';

export function backup(): HTMLElement {
  const file = h('input', {
    type: 'file',
    accept: '.json,application/json',
    id: 'restore',
    class: 'hidden-file',
    'data-t': 'restore',
    onchange: () => void restore(file),
  });
  const { aside } = state.get();
  return h(
    'section',
    { class: 'card backup' },
    h('h2', {}, t('backup.title')),
    h('p', {}, t('backup.what')),
    aside > 0 && h('p', { class: 'quiet', 'data-t': 'aside' }, t('backup.aside', { n: aside })),
    h(
      'div',
      { class: 'row' },
      h(
        'button',
        { class: 'big', 'data-t': 'backup', onclick: () => void save() },
        t('backup.save'),
      ),
      h('label', { for: 'restore', class: 'button big' }, t('backup.restore')),
      file,
    ),
  );
}

/** Hands the record over as a file. */
export async function save() {
  try {
    const k = await store.whole(),
      text = write(k, new Date().toISOString());
    const url = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
    h('a', { href: url, download: `sutur-${today()}.json` }).click();
    setTimeout(() => URL.revokeObjectURL(url), 60_000);
    state.set({ notice: { text: t('backup.saved') } });
    if (k.damaged.length !== state.get().aside) await follow(['learners', 'sessions', 'taught']);
  } catch {
    state.set({ notice: { text: t('backup.not-saved'), hold: true } });
  }
}

/** What a file brought is told of when it is read. */
function told(n: number) {
  const all = state.get().told + n;
  state.set({ told: all });
  tellDamaged(all).catch(() => undefined);
}

async function restore(input: HTMLInputElement) {
  const f = input.files?.[0];
  if (!f) return;
  try {
    if (f.size > LARGEST) throw new BackupError('big');
    const file = parse(await f.text()),
      add = additions(await store.whole(), file),
      odd = file.damaged.length;
    const n = add.sessions.length,
      more = n + add.learners.length + add.taught.length;
    if ((more || add.damaged.length) && !(await keep(() => store.merge(add)))) return;
    if (add.damaged.length) told(add.damaged.length);
    const text = t(more ? 'backup.restored' : 'backup.nothing', { n });
    state.set({
      notice: {
        text: odd ? `${text} ${t('backup.odd', { n: odd })}` : text,
        hold: odd > 0,
        name: 'restored',
      },
    });
  } catch (e) {
    if (!(e instanceof BackupError)) state.set({ kept: false });
    else
      state.set({
        notice: {
          text: t(`backup.${e.code}`, { file: f.name, where: e.where }),
          hold: true,
          name: 'refused',
        },
      });
  } finally {
    input.value = '';
  }
}
