// The settings of this device, and those of the learner who is reading.
import * as state from '../state.ts';
import * as store from '../store/store.ts';
import { LENGTHS, type Own, type Settings } from '../types.ts';
import { keep } from './keep.ts';

/** Those that belong to the learner, where there is one. */
const OWN: (keyof Own)[] = ['size', 'spacing', 'counting', 'large', ...LENGTHS];

/** Puts settings into effect and keeps them. */
export function changeSettings(patch: Partial<Settings>): Promise<boolean> {
  const learner = state.learner();
  const isOwn = (key: string) => !!learner && (OWN as string[]).includes(key);
  const entries = Object.entries(patch);
  const own = Object.fromEntries(entries.filter(([key]) => isOwn(key))) as Partial<Own>;
  const others = Object.fromEntries(entries.filter(([key]) => !isOwn(key))) as Partial<Settings>;
  const kept = [];
  if (learner && Object.keys(own).length) {
    const changed = { ...learner, own: { ...learner.own, ...own } };
    state.set({ learners: state.get().learners.map((l) => (l === learner ? changed : l)) });
    kept.push(keep(() => store.changeOwn(learner.id, own), false));
  }
  if (Object.keys(others).length) {
    state.set({ device: { ...state.get().device, ...others } });
    kept.push(keep(() => store.changeSettings(others), false));
  }
  return Promise.all(kept).then((all) => all.every(Boolean));
}
