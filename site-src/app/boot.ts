// Helps where the app's own script does not start, and shares no file with it. The words are those
// of the page; they are hidden until something goes wrong or the start takes long.
import { answers, refetch } from './offline/refetch.ts';
import { rescue } from './offline/rescue.ts';

const $ = (id: string) => document.getElementById(id);
const boot = $('boot');
const tools = $('tools');
const TRIED = 'sutur-tried';

/** Shows one of the lines below the buttons. */
function say(id: string) {
  for (const p of $('told')?.children ?? []) (p as HTMLElement).hidden = p.id !== id;
}

/**
 * Whether the page has been loaded anew for the same reason before; a browser that cannot tell
 * counts as yes.
 */
function tried(): boolean {
  try {
    const was = sessionStorage.getItem(TRIED);
    sessionStorage.setItem(TRIED, '1');
    return !!was;
  } catch {
    return true;
  }
}

let failed = false;

/**
 * A part of the app did not arrive or does not run: it is fetched again once, then the page says
 * so.
 */
async function fail(part: string) {
  if (failed || !boot?.isConnected) return;
  failed = true;
  if (!tried()) {
    await refetch();
    return location.reload();
  }
  document.documentElement.dataset.boot = 'failed';
  boot.setAttribute('role', 'alert');
  const missing = $('missing');
  if (missing) {
    missing.hidden = false;
    missing.append(` ${part.split('/').pop()!}`);
  }
}

addEventListener(
  'error',
  (e) => {
    const script = e.target as HTMLScriptElement | null;
    if (script?.tagName === 'SCRIPT') void fail(script.src);
    else if (e instanceof ErrorEvent) void fail(e.filename || e.message);
  },
  true,
);

/**
 * Repair; where its own part does not come, the page begins anew if the host answers, because
 * Firefox asks for a part once.
 */
const repair = () =>
  import('./offline/repair.ts').then(
    (m) => m.repair(refetch),
    async () => {
      await refetch();
      return answers();
    },
  );

async function run(work: () => Promise<boolean>, yes: string, no: string) {
  say('told-busy');
  const ok = await work().catch(() => false);
  say(ok ? yes : no);
  return ok;
}

if (tools) {
  tools.hidden = false;
  $('again')?.addEventListener('click', (e) => {
    e.preventDefault();
    void refetch().then(() => location.reload());
  }); // at the same place
  $('repair')?.addEventListener(
    'click',
    () =>
      void run(repair, 'told-busy', 'told-failed').then((ok) => {
        if (ok) location.reload();
      }),
  );
  $('rescue')?.addEventListener('click', () => void run(rescue, 'told-saved', 'told-none'));
}
