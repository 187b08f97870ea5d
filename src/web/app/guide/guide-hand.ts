import { useSyncExternalStore } from 'react';

/** The page of the guide that is open beside the boat, by its name; undefined while it is shut. */
let open: string | undefined;
const listeners = new Set<() => void>();

/** Opens the guide at a page, or shuts it. */
export const openGuide = (page: string | undefined): void => {
  open = page;
  for (const listener of listeners) listener();
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

export const useOpenGuide = (): string | undefined => useSyncExternalStore(subscribe, () => open);
