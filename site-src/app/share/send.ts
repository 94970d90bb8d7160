// Hands a link over: the system's own sheet on a phone, else the clipboard, else the text itself to
// copy by hand.

export async function send(url: string): Promise<'sent' | 'copied' | 'shown'> {
  if (navigator.share && matchMedia('(pointer: coarse)').matches) {
    try {
      await navigator.share({ url });
      return 'sent';
    } catch (e) {
      if ((e as DOMException).name === 'AbortError') return 'sent';
    }
  }
  try {
    await navigator.clipboard.writeText(url);
    return 'copied';
  } catch {
    return 'shown';
  }
}
