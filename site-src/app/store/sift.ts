// Keeps damaged records away from the screens: they are set aside as they are, never deleted, and
// told of once.
import type { Learner } from '../types.ts';
import { change, type Table, write } from './db.ts';
import { heirs, learner } from './mend.ts';
import { fits, type SHAPES, sound } from './shapes.ts';

// those are looked after in months.ts
type Checked = Exclude<keyof typeof SHAPES, 'sessions' | 'months'>;
interface Odd {
  table: Checked;
  record: unknown;
  key: IDBValidKey;
  repaired?: unknown;
}

/** A record that was set aside. */
export interface Damaged {
  table: Table;
  record: unknown;
}

const KEYS = {
  learners: (x) => x.id,
  taught: (x) => [x.learner, x.rule],
  drafts: (x) => [x.learner, x.at],
  settings: () => 'device',
} as Record<Checked, (x: Record<string, IDBValidKey>) => IDBValidKey>;

/**
 * Goes through what was read: whole gives the good records of a table; put away the others at the
 * end.
 */
export class Sift {
  odd: Odd[] = [];

  whole<T>(table: Checked, records: unknown[]): T[] {
    const good: T[] = [];
    for (const record of records) {
      const repaired = fits(table, record) ? record : this.aside(table, record);
      if (repaired) good.push(repaired as T);
    }
    return good;
  }

  private aside(table: Checked, record: unknown): unknown {
    const repaired =
      table === 'learners'
        ? learner(record)
        : table === 'settings'
          ? sound('settings', record)
          : undefined;
    this.odd.push({
      table,
      record,
      key: KEYS[table](record as Record<string, IDBValidKey>),
      ...(repaired && { repaired }),
    });
    return repaired;
  }

  /**
   * Where a learner was lost whole, or all are gone, their sessions and rules lead to one without a
   * name.
   */
  heirs(learners: Learner[], belongings: { learner: string }[]): Learner[] {
    return learners.length && !this.odd.some((o) => o.table === 'learners' && !o.repaired)
      ? []
      : heirs(learners, belongings);
  }

  /** Moves what is damaged out of its table, unless another tab has done so, and keeps heirs. */
  async done(heirs: Learner[] = []): Promise<void> {
    if (!this.odd.length && !heirs.length) return;
    await write(
      [
        ...new Set([
          ...this.odd.map((o) => o.table),
          ...(heirs.length ? ['learners' as const] : []),
        ]),
        'damaged',
      ],
      (tx) => {
        for (const { table, key, repaired } of this.odd) {
          const from = tx.objectStore(table);
          change(from, key, (now) => {
            if (now === undefined || fits(table, now)) return undefined;
            tx.objectStore('damaged').add({ table, record: now });
            if (!repaired) from.delete(key);
            return repaired;
          });
        }
        for (const l of heirs) change<Learner>(tx.objectStore('learners'), l.id, (now) => now ?? l);
      },
    );
  }
}
