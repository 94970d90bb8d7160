// Says what was done, with a way back.
import { t } from '../i18n.ts';
import * as state from '../state.ts';
import type { Notice } from '../state.ts';

/** run takes it back; more is what else there is to the notice. */
export function offerUndo(text: string, run: () => unknown, more: Partial<Notice> = {}) {
  state.set({ notice: { text, action: { label: t('undo'), run: () => void run() }, ...more } });
}
