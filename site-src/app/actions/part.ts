// A part of the app that is fetched when somebody asks for what is in it.
import { t } from '../i18n.ts';
import * as state from '../state.ts';

/** The part that is on its way; where it does not come, that is said. */
export const arrived = <M>(part: Promise<M>): Promise<M | undefined> =>
  part.catch(() => {
    state.set({ notice: { text: t('error.part'), hold: true } });
    return undefined;
  });
