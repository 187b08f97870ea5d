import { useSyncExternalStore } from 'react';

const listeners = new Set<() => void>();
let now: string | undefined;

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** Chooses the revision that is read, by its mark; undefined is the boat as she stands now. */
export const readRevision = (mark: string | undefined): void => {
  now = mark;
  for (const listener of listeners) listener();
};

/** The mark of the revision that is read instead of the boat as she stands now. */
export const useReadRevision = (): string | undefined => useSyncExternalStore(subscribe, () => now);
