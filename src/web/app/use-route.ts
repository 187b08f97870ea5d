import { useEffect, useMemo, useRef, useState } from 'react';
import { isSameBoat, type Route, routeOf } from './route.ts';

/**
 * Where in the app one is; changes with the address. Before the boat is left `mayLeave` is asked; where it says no, the
 * address goes back to what it was.
 */
export const useRoute = (mayLeave: () => boolean): Route => {
  const [hash, setHash] = useState(() => window.location.hash);
  const shown = useRef(hash);
  useEffect(() => {
    const move = (): void => {
      const next = window.location.hash;
      if (isSameBoat(routeOf(next), routeOf(shown.current)) || mayLeave()) {
        shown.current = next;
        setHash(next);
      } else window.history.replaceState(null, '', shown.current === '' ? '#/' : shown.current);
    };
    window.addEventListener('hashchange', move);
    return () => window.removeEventListener('hashchange', move);
  }, [mayLeave]);
  return useMemo(() => routeOf(hash), [hash]);
};
