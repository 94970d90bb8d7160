// What must not compile: each line below an expectation is an error of types, and `npm run check`
// fails where one is not. Nothing here is run.
import type { Draft, Entry, Learner, Session } from '../../app/types.ts';
import * as store from '../../app/store/store.ts';
import { addEntries, readEntries } from '../../app/store/months.ts';
import { modify, read, write } from '../../app/store/transaction.ts';
import { isValid } from '../../app/store/validate.ts';

declare const learner: Learner, session: Session, entry: Entry, draft: Draft, unknown: unknown;

export const names = [
  // @ts-expect-error no such store
  read(['pupils'], (tx) => tx.objectStore('pupils').getAll()),
  // @ts-expect-error a store outside the transaction
  read(['learners'], (tx) => tx.objectStore('sessions').getAll()),
  // @ts-expect-error no such index
  read(['sessions'], (tx) => tx.objectStore('sessions').index('day').getAll()),
  // @ts-expect-error sessions are read too
  read(['months'], (tx) => readEntries(tx)),
  // @ts-expect-error months are written too
  write(['sessions'], (tx) => addEntries(tx, [session])),
];

export const values = [
  // @ts-expect-error a learner is no session
  write(['sessions'], (tx) => tx.objectStore('sessions').put(learner)),
  // @ts-expect-error an entry lacks marks and stops
  write(['sessions'], (tx) => tx.objectStore('sessions').put(entry)),
  // @ts-expect-error a field is missing
  write(['taught'], (tx) => tx.objectStore('taught').put({ learner: '', rule: '', since: '' })),
  // @ts-expect-error a field has another type
  write(['drafts'], (tx) => tx.objectStore('drafts').put({ ...draft, phase: 'begun' })),
  // @ts-expect-error a set-aside record names its store
  write(['damaged'], (tx) => tx.objectStore('damaged').add({ table: 'pupils', record: 0 })),
  // @ts-expect-error no such setting
  write(['settings'], (tx) => tx.objectStore('settings').put({ colour: 'red' }, 'device')),
  // @ts-expect-error no such setting
  store.changeSettings({ colour: 'red' }),
  // @ts-expect-error a name is a text
  store.changeLearner('id', { name: 1 }),
];

export const keys = [
  // @ts-expect-error the key has two parts
  read(['drafts'], (tx) => tx.objectStore('drafts').get('id')),
  // @ts-expect-error no such key
  read(['settings'], (tx) => tx.objectStore('settings').get('learner')),
  // @ts-expect-error the key is a text
  write(['learners'], (tx) => modify(tx, 'learners', 1, (stored) => stored)),
];

export const writes = [
  // @ts-expect-error nothing is written within a read
  read(['learners'], (tx) => tx.objectStore('learners').put(learner)),
];

// @ts-expect-error what was read is a learner only when it has been checked
export const unchecked: Learner = unknown;
export const checked: Learner | undefined = isValid('learners', unknown) ? unknown : undefined;
