import { useSyncExternalStore } from 'react';
import type { WhichPapers } from '../../../workers/binder-protocol.ts';

const listeners = new Set<() => void>();
let now: WhichPapers = 'binder';

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** Chooses which papers lie on the desk; the binder until somebody wants others. */
export const choosePapers = (papers: WhichPapers): void => {
  now = papers;
  for (const listener of listeners) listener();
};

/** Which papers lie on the desk. */
export const useWhichPapers = (): WhichPapers => useSyncExternalStore(subscribe, () => now);
