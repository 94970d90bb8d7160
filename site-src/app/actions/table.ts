// Hands the sessions of a learner over as a table for spreadsheets.
import { t } from '../i18n.ts';
import { csv } from '../record/csv.ts';
import { today } from '../record/week.ts';
import * as state from '../state.ts';
import { hand } from './hand.ts';

/** The file's name says the day and no child. */
export function saveTable() {
  const l = state.learner();
  if (!l) return;
  try {
    const text = csv(state.get().catalogue, state.sessionsOf(l.id));
    hand(text, `sutur-sessions-${today()}.csv`, 'text/csv;charset=utf-8');
    state.set({ notice: { text: t('record.table-saved'), name: 'table' } });
  } catch {
    state.set({ notice: { text: t('record.table-failed'), hold: true } });
  }
}
