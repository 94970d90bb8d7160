// The files of the site and the addresses of its pages, where they lie beside each other on a host.
// In the one file, which holds them all, files.one.ts stands in place of this.

/** Whether this is the one file. */
export const ONE_FILE: boolean = false;

/** The bytes of a file, by its name below the root. */
export async function read(
  name: string,
  cache: RequestCache = 'default',
): Promise<Uint8Array<ArrayBuffer>> {
  const res = await fetch(name, { cache });
  if (!res.ok) throw new Error(String(res.status));
  return new Uint8Array(await res.arrayBuffer());
}

/** The address of a page that is read, by its name below the root and a place in it. */
export const page = (path: string) => path;
