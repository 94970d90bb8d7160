// Keeps damaged records away from the screens: they are set aside as they are, never deleted. Of a
// damaged learner, and of damaged settings, what is valid goes on. Sessions are looked after in
// months.ts.
import type { Draft, Learner, Taught } from '../types.ts';
import { repairLearner, replaceLost } from './repair.ts';
import type { Damaged, Key, Writing } from './schema.ts';
import { modify, write } from './transaction.ts';
import { isValid, type Records, validFields } from './validate.ts';

type Checked = 'learners' | 'taught' | 'drafts' | 'settings';

interface Found<Name extends Checked = Checked> {
  table: Name;
  record: unknown;
  repaired: Records[Name] | undefined;
}

const REPAIRS: { [Name in Checked]: (record: unknown) => Records[Name] | undefined } = {
  learners: repairLearner,
  settings: (record) => validFields('settings', record),
  taught: () => undefined,
  drafts: () => undefined,
};

const KEYS: { [Name in Checked]: (record: unknown) => Key<Name> } = {
  learners: (record) => (record as Learner).id,
  settings: () => 'device',
  taught: (record) => [(record as Taught).learner, (record as Taught).rule],
  drafts: (record) => [(record as Draft).learner, (record as Draft).at],
};

/** Goes through what was read: first give accept all records, then call setAside. */
export class Quarantine {
  private readonly found: Found[] = [];

  /** The valid records, and what repairs leave of the others. */
  accept<Name extends Checked>(table: Name, records: unknown[]): Records[Name][] {
    const accepted: Records[Name][] = [];
    for (const record of records) {
      const valid = isValid(table, record) ? record : this.note(table, record);
      if (valid) accepted.push(valid);
    }
    return accepted;
  }

  private note<Name extends Checked>(table: Name, record: unknown): Records[Name] | undefined {
    const repaired = REPAIRS[table](record);
    this.found.push({ table, record, repaired });
    return repaired;
  }

  get damaged(): Damaged[] {
    return this.found.map(({ table, record }) => ({ table, record }));
  }

  /**
   * Learners without a name to whom sessions and rules belong whose own learner was lost: where one
   * could not be repaired, or all are gone.
   */
  lostLearners(learners: Learner[], belongings: { learner: string }[]): Learner[] {
    const lost = this.found.some((x) => x.table === 'learners' && !x.repaired);
    return lost || !learners.length ? replaceLost(learners, belongings) : [];
  }

  /** Moves what is damaged out of its store, and keeps learners that replace lost ones. */
  async setAside(learners: Learner[] = []): Promise<void> {
    if (!this.found.length && !learners.length) return;
    const tables: Checked[] = this.found.map((x) => x.table);
    if (learners.length) tables.push('learners');
    await write([...new Set(tables), 'damaged'], async (tx) => {
      for (const x of this.found) await move(tx, x);
      for (const l of learners) await modify(tx, 'learners', l.id, (stored) => stored ?? l);
    });
  }
}

/** Within a write: moves one record out of its store, unless another tab has done so. */
async function move<Name extends Checked>(
  tx: Writing<Checked | 'damaged'>,
  { table, record, repaired }: Found<Name>,
) {
  const key = KEYS[table](record);
  const stored = await tx.objectStore(table).get(key);
  if (stored === undefined || isValid(table, stored)) return;
  await tx.objectStore('damaged').add({ table, record: stored });
  if (repaired) await modify(tx, table, key, () => repaired);
  else await tx.objectStore(table).delete(key);
}
