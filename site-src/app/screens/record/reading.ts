// What a backup file would do, before it is read: learner by learner, each to be left out.
import '../../later.ts';
import { html, nothing } from 'lit-html';
import { accept, choose, type Reading, restore } from '../../actions/backup.ts';
import { t } from '../../i18n.ts';
import { changes, type Row } from '../../record/preview.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { closeDialog } from '../parts/box.ts';
import { tick } from '../parts/tick.ts';
import { called } from '../parts/words.ts';

/** Reads a backup file, after a look. */
export async function readFile(file: File) {
  state.set({ dialog: view });
  await restore(file);
}

const view = (s: State) => (s.reading ? reading(s.reading) : nothing);

const take = (e: Event) => {
  const taken = accept();
  closeDialog(e);
  void taken;
};

function reading(r: Reading) {
  const { rows, file, ids } = r;
  const something =
    rows.some(
      (row) => ids.has(row.learner.id) && (changes(row) || (r.back && row.removedHere > 0)),
    ) || file.damaged.length > 0;
  const removedHere = rows.reduce((n, row) => n + row.removedHere, 0);
  return html`
    <dialog
      class="asks"
      data-t="reading"
      aria-labelledby="reading-title"
      @close=${() => state.set({ reading: undefined })}
    >
      <h2 id="reading-title">${t('reading.title')}</h2>
      <p class="quiet">${t('reading.what')}</p>
      <ul class="readings">
        ${rows.map((row) => one(r, row))}
      </ul>
      ${
        file.damaged.length
          ? html`<p class="quiet">${t('backup.odd', { n: file.damaged.length })}</p>`
          : nothing
      }
      ${removedHere ? bringBack(r, removedHere) : nothing}
      <div class="row">
        <button class="main" data-t="reading-take" ?disabled=${!something} @click=${take}>
          ${t('reading.take')}
        </button>
        <button class="plain" data-t="reading-leave" @click=${closeDialog}>
          ${t('reading.leave')}
        </button>
      </div>
    </dialog>
  `;
}

/** A learner of the file: alone, or one of several, who may be left out. */
function one({ rows, ids }: Reading, row: Row) {
  const { learner } = row;
  const name = html`<b><bdi>${called(learner)}</bdi></b>`;
  const id = `reading-${learner.id}`;
  const choice = (on: boolean) => {
    const others = [...ids].filter((x) => x !== learner.id);
    choose({ ids: new Set(on ? [...others, learner.id] : others) });
  };
  return html`<li data-t=${id}>
    ${rows.length > 1 ? tick(`${id}-on`, name, ids.has(learner.id), choice) : name}
    <p>${told(row)}</p>
  </li>`;
}

function told(row: Row): string {
  const n = (key: 'added' | 'corrected' | 'removed' | 'left' | 'rules') =>
    row[key] ? t(`reading.${key}`, { n: row[key] }) : '';
  const all = [
    row.isNew ? t('reading.new') : '',
    n('added'),
    n('corrected'),
    n('removed'),
    row.isNew ? '' : n('rules'),
    row.other ? t('reading.other') : '',
    n('left'),
  ].filter(Boolean);
  return all.join(' ') || t('reading.nothing');
}

const bringBack = (r: Reading, n: number) =>
  tick('reading-back', t('reading.back', { n }), r.back, (back) => choose({ back }));
