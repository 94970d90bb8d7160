// Hands a link over: the system's own sheet on a phone, else the clipboard, else the text itself to
// copy by hand.

/** Whether there is a sheet of the system's that a finger would look for. */
export const hasSheet = () => !!navigator.share && matchMedia('(pointer: coarse)').matches;

/** text stands before the link; one of both may be empty. */
export async function send(url: string, text = ''): Promise<'sent' | 'copied' | 'shown'> {
  if (hasSheet()) {
    try {
      await navigator.share({ ...(url && { url }), ...(text && { text }) });
      return 'sent';
    } catch (e) {
      if ((e as DOMException).name === 'AbortError') return 'sent';
    }
  }
  return (await copy([text, url].filter(Boolean).join('\n'))) ? 'copied' : 'shown';
}

/** Puts text on the clipboard; false where the browser does not let. */
export async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
