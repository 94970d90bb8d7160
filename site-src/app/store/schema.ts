// What the database holds, as types: the wrong store, key or value does not compile. They say what
// is written. What is read may be damaged or come from any version, so it goes through validate.ts
// before anything else sees it.
import type {
  DBSchema,
  IDBPDatabase,
  IDBPObjectStore,
  IDBPTransaction,
  StoreKey,
  StoreNames,
  StoreValue,
} from 'idb';
import type { Draft, Gone, Learner, Session, Settings, Taught } from '../types.ts';

/** A record that was set aside because it is damaged, as it was found. */
export interface Damaged {
  table: StoreName;
  record: unknown;
}

export interface Schema extends DBSchema {
  learners: { key: string; value: Learner };
  sessions: { key: string; value: Session; indexes: { learner: string } };
  /** See months.ts: a month's entries as JSON, and the version of all of them. */
  months: { key: 'made' | [learner: string, month: string]; value: string | number };
  taught: { key: [learner: string, rule: string]; value: Taught };
  /** The device's settings, and how many damaged records the family has been told of. */
  settings: { key: 'device' | 'told'; value: Partial<Settings> | number };
  drafts: { key: [learner: string, at: string]; value: Draft };
  /** Sessions that were removed. */
  gone: { key: string; value: Gone };
  damaged: { key: number; value: Damaged };
}

export type StoreName = StoreNames<Schema>;
export type Key<Name extends StoreName> = StoreKey<Schema, Name>;
export type Value<Name extends StoreName> = StoreValue<Schema, Name>;

type Mode = 'readonly' | 'readwrite' | 'versionchange';
export type Store<Name extends StoreName, M extends Mode> = IDBPObjectStore<
  Schema,
  StoreName[],
  Name,
  M
>;

/** A transaction over at least these stores. */
interface Transaction<in Names extends StoreName, M extends Mode> {
  readonly objectStore: <Name extends Names>(name: Name) => Store<Name, M>;
}
export type Reading<Names extends StoreName> = Transaction<Names, 'readonly'>;
export interface Writing<in Names extends StoreName> extends Transaction<Names, 'readwrite'> {
  commit(): void;
}

export type Database = IDBPDatabase<Schema>;
/** The transaction of an upgrade. */
export type Upgrading = IDBPTransaction<Schema, StoreName[], 'versionchange'>;
