// What was damaged in the record is told of once, with the choice to save it.
import * as state from '../../state.ts';
import { tellDamaged } from '../../store/store.ts';
import { t } from '../../i18n.ts';

/** Tells what was set aside since the last telling, if anything was. */
export function tellAside() {
  const { aside, told } = state.get();
  if (aside <= told) return;
  const heard = () => {
    state.set({ told: aside });
    tellDamaged(aside).catch(() => undefined);
  };
  state.set({
    notice: {
      text: t('backup.damaged-here', { n: aside - told }),
      hold: true,
      name: 'damaged',
      closed: heard,
      action: {
        label: t('backup.save'),
        run: () =>
          void import('./backup.ts').then(
            (m) => m.save(),
            () => state.set({ notice: { text: t('error.part'), hold: true } }),
          ),
      },
    },
  });
}
