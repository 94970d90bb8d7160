// Why the record cannot be opened.

/**
 * A key of the string catalogue below "closed.": the device does not answer; a tab with an older
 * version holds the database; a newer version has used it; what is there cannot be read; the
 * browser keeps nothing.
 */
export type Reason = 'slow' | 'blocked' | 'newer' | 'damaged' | 'none';

export class Unavailable extends Error {
  constructor(readonly reason: Reason) {
    super(`the record cannot be opened: ${reason}`);
  }
}

/** The reason for what opening the database has thrown. */
export function openingFailed(e: unknown): Unavailable {
  switch ((e as DOMException | undefined)?.name) {
    case 'VersionError':
      return new Unavailable('newer');
    // blocked, private, or absent
    case 'SecurityError':
    case 'InvalidStateError':
    case 'ReferenceError':
    case 'TypeError':
      return new Unavailable('none');
    default:
      return new Unavailable('damaged');
  }
}

/** The reason for what opening or reading has thrown. */
export const reasonOf = (e: unknown): Reason => (e instanceof Unavailable ? e.reason : 'damaged');
