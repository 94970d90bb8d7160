// A sheet's address, read one key at a time.
import type { Below, Key, Vars } from '../i18n.ts';

/** Why something is not shown as it was asked for, in words of the catalogue. */
export interface Problem {
  key: Key;
  vars: Vars;
}

/** A query that is read one key at a time; the first value that cannot be read is the problem. */
export class Query {
  problem: Problem | undefined;
  private readonly q: URLSearchParams;

  constructor(hash: string) {
    this.q = new URLSearchParams(hash.split('?')[1] ?? '');
  }

  get(key: string): string | null {
    return this.q.get(key);
  }

  bad(key: Below<'print.bad'>, found: string, vars: Vars = {}) {
    this.problem ??= { key: `print.bad.${key}`, vars: { found, ...vars } };
  }

  choice<T extends string>(key: string, list: readonly T[], usual: T): T {
    const text = this.get(key);
    if (text === null) return usual;
    const known = list.find((x) => x === text);
    if (!known) this.bad('choice', text, { name: key, accepted: list.join(', ') });
    return known ?? usual;
  }

  /** Those ids that there are. */
  known(ids: string[], isThere: (id: string) => boolean): string[] {
    const odd = ids.find((id) => !isThere(id));
    if (odd !== undefined) this.bad('rule', odd);
    return ids.filter(isThere);
  }

  number(key: 'size' | 'juz', least: number, most: number, usual: number): number {
    const text = this.get(key);
    if (text === null) return usual;
    const n = Number(text);
    if (/^\d{1,3}$/.test(text) && n >= least && n <= most) return n;
    this.bad(key, text, { least, most });
    return usual;
  }
}
