// How the browser keeps the record, and what a family can do so that it stays.
import { ONE_FILE } from '../edition/files.ts';
import { clearsAfterWeek, gecko, installed } from '../offline/device.ts';
import { t } from '../i18n.ts';
import { note, noted } from '../notes.ts';
import * as state from '../state.ts';
import type { State } from '../state.ts';

/** Time (ms) after which a backup is old, and for which nothing is said once it was put off. */
const FIVE_DAYS = 5 * 864e5;

/** What the browser says of its storage, and what the family has heard of it. */
export interface Safety {
  /**
   * persistent: not cleared when space runs short; week: cleared after a week without a visit; file: by
   * the place of the one file, whatever else the browser says.
   */
  kept: 'persistent' | 'installed' | 'week' | 'loose' | 'file';
  /** Whether to ask for persistent storage would show a question of the browser's own. */
  question: boolean;
  /** When it was put off last (ms); 0 for never. */
  putOff: number;
  /** Nothing more is said in this visit. */
  quiet: boolean;
}

const PUT_OFF = 'sutur-put-off';
const SAID = 'sutur-said';

const persisted = async () => (await navigator.storage?.persisted?.().catch(() => false)) ?? false;

/** Firefox alone shows a question, until it was answered; the others decide by themselves. */
async function wouldAsk(): Promise<boolean> {
  if (!gecko()) return false;
  const name = 'persistent-storage' as PermissionName;
  const answer = await navigator.permissions?.query({ name }).catch(() => undefined);
  return answer?.state === 'prompt';
}

function keptHow(persistent: boolean): Safety['kept'] {
  if (ONE_FILE) return 'file';
  if (persistent) return 'persistent';
  if (clearsAfterWeek()) return 'week';
  return installed() ? 'installed' : 'loose';
}

/** Puts into the state how the record is kept now. */
export async function look(): Promise<Safety> {
  const persistent = await persisted();
  const safety: Safety = {
    kept: keptHow(persistent),
    question: !ONE_FILE && !persistent && (await wouldAsk()),
    putOff: Number(noted('device', PUT_OFF)) || 0,
    quiet: noted('visit', SAID) !== '',
  };
  state.set({ safety });
  return safety;
}

const persist = async () => (await navigator.storage?.persist?.().catch(() => false)) ?? false;

/** Whether persistent storage can be asked for, and the browser decides by itself. */
export const asksQuietly = () => !gecko() && !!navigator.storage?.persist;

/** Once a session is kept: asks for persistent storage, unless that would show a question. */
export async function secure() {
  const { kept, question } = await look();
  if (kept === 'persistent' || question) return;
  if (await persist()) await look();
}

/**
 * Asks with the browser's own question. A private window of Firefox shows none and refuses, though it
 * says that it would ask.
 */
export async function ask() {
  const granted = await persist();
  const safety = await look();
  if (!granted) {
    state.set({ safety: { ...safety, question: false } });
    putOff();
  }
  state.set({ notice: { text: t(granted ? 'safe.granted' : 'safe.refused'), hold: !granted } });
}

/** Shows the browser's own offer to put Sutur on the home screen. */
export async function install() {
  const offer = state.get().install;
  state.set({ install: undefined });
  await offer?.prompt();
  await secure();
}

/** Nothing more is said for some days. */
export function putOff() {
  note('device', PUT_OFF, String(Date.now()));
  hush();
}

/** Nothing more is said in this visit. */
export function hush() {
  note('visit', SAID, '1');
  const { safety } = state.get();
  if (safety) state.set({ safety: { ...safety, quiet: true } });
}

/** How many sessions were kept since the last backup. */
export const sinceBackup = ({ sessions, settings }: State) =>
  sessions.filter(({ at }) => at > (settings.backed ?? '')).length;

/** Whether the last backup is some days old, or there is none, and sessions were kept since. */
export const backupDue = (s: State) =>
  sinceBackup(s) > 0 && Date.now() - Date.parse(s.settings.backed ?? '1970-01-01') > FIVE_DAYS;

/**
 * Whether something is to be said of it unasked: once, and later on only where a backup is due as
 * well.
 */
export function due(s: State): boolean {
  const x = s.safety;
  if (!x || x.quiet || !s.sessions.length) return false;
  if (x.kept === 'persistent' || x.kept === 'installed') return false;
  return !x.putOff || (Date.now() - x.putOff > FIVE_DAYS && backupDue(s));
}
