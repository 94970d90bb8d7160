// The one file is kept by whoever has it, and nothing in it can become newer.
import '../later.ts';
import * as state from '../state.ts';

export const keepSite = async () => state.set({ offline: { kind: 'one-file' } });

export const keepAgain = keepSite;
