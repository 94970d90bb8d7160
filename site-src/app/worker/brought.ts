// What another app shares with this one comes as a form (W3C draft, Web Share Target). It is kept as
// it came, and the page that is opened then takes it away and reads it (screens/brought).
import { LARGEST } from '../record/largest.ts';
import { BROUGHT } from './names.ts';
import { scope, STATE, urlOf } from './scope.ts';

/** Bytes that the form may have beside the file. */
const AROUND = 1 << 20;

/** Keeps a form and sends the browser on to the page; a form that is too large is kept as empty. */
export async function bring(r: Request): Promise<Response> {
  try {
    const form = await r.blob();
    const type = r.headers.get('Content-Type') ?? '';
    const kept =
      form.size > LARGEST + AROUND
        ? new Response()
        : new Response(form, { headers: { 'Content-Type': type } });
    await (await caches.open(STATE)).put(urlOf(BROUGHT), kept);
  } catch {
    // The page finds nothing, and says so.
  }
  return Response.redirect(`${scope}#/${BROUGHT}`, 303);
}
