// Changes to a record, field by field.

/** Fields to change; undefined takes one away. */
export type Patch<T> = Partial<{ [Field in keyof T]: T[Field] | undefined }>;

export function patched<T extends object>(record: T, patch: Patch<T>): T {
  const fields = Object.entries({ ...record, ...patch }).filter(([, value]) => value !== undefined);
  return Object.fromEntries(fields) as T;
}
