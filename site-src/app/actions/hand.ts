// Hands a file over to the browser's downloads.

/** How long (ms) a file can be fetched after it has been handed over. */
const HELD = 60_000;

export function hand(text: string, name: string, type: string) {
  const url = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), HELD);
}
