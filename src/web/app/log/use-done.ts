import { useEffect, useState } from 'react';
import { usePart } from '../use-part.ts';

// the log brings what checks its lines, which is no part of the way to the first picture
const bringWatch = () => import('./watch-done.ts');

const nothing: ReadonlyMap<string, string> = new Map();

/** Which jobs of the boat that is open are done, each with its day; none until her log is here. */
export const useDone = (boatName: string): ReadonlyMap<string, string> => {
  const watch = usePart(bringWatch);
  const [done, setDone] = useState(nothing);
  useEffect(() => watch?.watchDone(boatName, setDone), [watch, boatName]);
  return done;
};
