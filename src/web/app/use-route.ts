import { useMemo, useSyncExternalStore } from 'react';
import { type Route, routeOf } from './route.ts';

const subscribe = (listener: () => void): (() => void) => {
  window.addEventListener('hashchange', listener);
  return () => window.removeEventListener('hashchange', listener);
};

/** Where in the app one is; changes with the address. */
export const useRoute = (): Route => {
  const hash = useSyncExternalStore(subscribe, () => window.location.hash);
  return useMemo(() => routeOf(hash), [hash]);
};
