import { useSyncExternalStore } from 'react';

/**
 * Which things are lit, on the drawing and in the margin at once. What the pointer or the keyboard rests on is lit
 * while it rests there; what was picked stays lit until something else is picked.
 */
export interface LightStore {
  readonly rest: (ids: readonly string[]) => void;
  readonly pick: (ids: readonly string[]) => void;
  /** what was picked last, the same set until something else is */
  readonly picked: () => ReadonlySet<string>;
  /** true when any of the ids is lit */
  readonly isLit: (ids: readonly string[]) => boolean;
  readonly subscribe: (listener: () => void) => () => void;
}

/** Makes a store with nothing lit. */
export const lightStore = (): LightStore => {
  let resting: ReadonlySet<string> = new Set();
  let picked: ReadonlySet<string> = new Set();
  const listeners = new Set<() => void>();
  const tell = (): void => {
    for (const listener of listeners) listener();
  };
  return {
    rest: (ids) => {
      if (ids.length === 0 && resting.size === 0) return;
      resting = new Set(ids);
      tell();
    },
    pick: (ids) => {
      picked = new Set(ids);
      tell();
    },
    picked: () => picked,
    isLit: (ids) => {
      const lit = resting.size > 0 ? resting : picked;
      return ids.some((id) => lit.has(id));
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
};

/** True while any of the ids is lit; the component draws again only when that changes. */
export const useIsLit = (lights: LightStore, ids: readonly string[]): boolean =>
  useSyncExternalStore(lights.subscribe, () => lights.isLit(ids));
