import { useSyncExternalStore } from 'react';

/** The three lights of the screen; the same names as the themes of the drawings. */
export const lights = ['day', 'dusk', 'night'] as const;
export type Light = (typeof lights)[number];

/** Also read by first-theme.js, before the first paint. */
const storageKey = 'fairlead-theme';

const listeners = new Set<() => void>();
const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

const current = (): Light => lights.find((light) => light === document.documentElement.dataset.theme) ?? 'day';

/** Switches the light of the whole screen and remembers it where the browser allows that. */
export const setLight = (light: Light): void => {
  document.documentElement.dataset.theme = light;
  try {
    localStorage.setItem(storageKey, light);
  } catch {
    // A private window may bar storage; the light then lasts as long as the page.
  }
  for (const listener of listeners) listener();
};

/** The light of the screen now. */
export const useLight = (): Light => useSyncExternalStore(subscribe, current);
