import { useEffect, useState } from 'react';
import type { Tested } from '../../../core/proof/dock/tested.ts';
import type { TestEntry } from '../../../core/tests-shape.ts';
import { usePart } from '../use-part.ts';

// the log brings what checks its lines, which is no part of the way to the first picture
const bringWatch = () => import('./watch-tested.ts');

/** How far the tests of the boat that is open have come; undefined until her log is here. */
export const useTested = (boatName: string, tests: readonly TestEntry[]): Tested | undefined => {
  const watch = usePart(bringWatch);
  const [tested, setTested] = useState<Tested | undefined>(undefined);
  useEffect(() => watch?.watchTested(boatName, tests, setTested), [watch, boatName, tests]);
  return tested;
};
