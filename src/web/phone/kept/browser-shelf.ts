import type { Shelf } from '../store/shelf.ts';

/** The browser’s own store. Where it is barred nothing is ever kept, and the page says so. */
export const browserShelf: Shelf = {
  keys: () => {
    try {
      return Object.keys(localStorage);
    } catch {
      return [];
    }
  },
  get: (key) => {
    try {
      return localStorage.getItem(key) ?? undefined;
    } catch {
      return undefined;
    }
  },
  set: (key, text) => {
    try {
      localStorage.setItem(key, text);
      return true;
    } catch {
      return false;
    }
  },
  remove: (key) => {
    try {
      localStorage.removeItem(key);
    } catch {
      // nothing was kept there
    }
  },
};
