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

/** Has the frame of the installed app, and the bar of a phone’s browser, in the light of the page: a white one blinds at night. */
export const tintFrame = (): void => {
  const paper = getComputedStyle(document.documentElement).getPropertyValue('--paper').trim();
  document.querySelector('meta[name="theme-color"]')?.setAttribute('content', paper);
};

/** Switches the light of the whole screen and remembers it where the browser allows that. */
export const setLight = (light: Light): void => {
  document.documentElement.dataset.theme = light;
  tintFrame();
  try {
    localStorage.setItem(storageKey, light);
  } catch {
    // A private window may bar storage; the light then lasts as long as the page.
  }
  for (const listener of listeners) listener();
};

/** The light of the screen now. */
export const useLight = (): Light => useSyncExternalStore(subscribe, current);
