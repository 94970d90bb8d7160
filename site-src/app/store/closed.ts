// Why the record cannot be opened, told by what the browser says.

/** A key of the string catalogue below "closed.". */
export type Closed = 'slow' | 'newer' | 'damaged' | 'none';

export function closedBy(e: unknown): Closed {
  switch ((e as DOMException | undefined)?.name) {
    case 'TimeoutError':
      return 'slow';
    case 'VersionError':
      return 'newer';
    case 'SecurityError':
    case 'InvalidStateError':
    case 'ReferenceError':
    case 'TypeError':
      return 'none'; // blocked, private, or absent
    default:
      return 'damaged';
  }
}
