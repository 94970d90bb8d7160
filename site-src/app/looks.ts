// Puts the settings of the device into effect: letter size, spacing, theme and the own pencils.
import { note } from './notes.ts';
import * as state from './state.ts';
import { setTheme } from './theme.ts';
import type { Settings } from './types.ts';

let applied: Settings | undefined;

/** Once for each change; the theme is also noted where the next page finds it before it is drawn. */
export function apply(s: Settings) {
  if (s === applied) return;
  applied = s;
  const root = document.documentElement;
  root.style.setProperty('--size', String(s.size));
  root.style.setProperty('--spacing', String(s.spacing));
  setTheme(s.theme);
  if (s.pencils) void own();
  note('device', 'sutur-theme', s.theme);
}

async function own() {
  try {
    const { apply } = await import('./colour/pencils.ts');
    apply(state.get().catalogue, state.get().settings.pencils);
  } catch {
    applied = undefined; // with the next drawing
  }
}
