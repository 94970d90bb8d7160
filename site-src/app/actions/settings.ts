// The settings of this device.
import * as state from '../state.ts';
import * as store from '../store/store.ts';
import type { Settings } from '../types.ts';
import { keep } from './keep.ts';

/** Puts settings of the device into effect and keeps them. */
export function changeSettings(patch: Partial<Settings>) {
  state.set({ settings: { ...state.get().settings, ...patch } });
  return keep(() => store.changeSettings(patch));
}
