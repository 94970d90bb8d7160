// The files of the site as the one file holds them: as base64 in elements that are not run.

export const ONE_FILE: boolean = true;

/** The element that holds a file. */
export const held = (name: string) =>
  document.querySelector<HTMLElement>(`script[data-file="${CSS.escape(name)}"]`);

/** The bytes of a file; none where it is not there, which no digest is right for. */
export async function read(name: string): Promise<Uint8Array<ArrayBuffer>> {
  const text = atob(held(name)?.textContent ?? '');
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; i++) bytes[i] = text.charCodeAt(i);
  return bytes;
}

/** The address of a page is that of a screen; the build writes the same into the pages. */
export function page(path: string): string {
  const [name, ...at] = path.split('#');
  const place = at.length ? `&at=${encodeURIComponent(at.join('#'))}` : '';
  return `#/read?page=${encodeURIComponent(name!)}${place}`;
}
