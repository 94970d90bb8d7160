// What was damaged in the record is told of once, with the choice to save it.
import { t } from '../i18n.ts';
import * as state from '../state.ts';
import { tellDamaged } from '../store/store.ts';
import { arrived } from './part.ts';

/** Tells what was set aside since the last telling, if anything was. */
export function reportDamaged() {
  const { damaged, reported } = state.get();
  if (damaged <= reported) return;
  const closed = () => {
    state.set({ reported: damaged });
    tellDamaged(damaged).catch(() => undefined);
  };
  const text = t('backup.damaged-here', { n: damaged - reported });
  const action = { label: t('backup.save'), run: () => void save() };
  state.set({ notice: { text, hold: true, name: 'damaged', closed, action } });
}

async function save() {
  const part = await arrived(import('./backup.ts'));
  await part?.save();
}
