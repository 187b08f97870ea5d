import type { TestEntry } from '../../tests-shape.ts';
import { busTests } from './bus-tests.ts';
import type { DockInput } from './dock-input.ts';
import { hullTests } from './hull-tests.ts';
import { noiseTests, pullTests, triedTests } from './pull-tests.ts';
import { feedTests, pairTests, shownTests } from './unit-tests.ts';

/**
 * The sheet of tests at the dock, in the order in which they are worked through: buses with the power off, what every feed
 * brings, buses with the power on, pairs, a metal hull, every reading at every screen, each source pulled once, what is tried,
 * and last what disturbs the radios. Expected values follow from the plan, windows from facts. Pure.
 */
export const dockSheet = (input: DockInput): TestEntry[] => {
  const buses = busTests(input);
  return [
    ...buses.off,
    ...feedTests(input),
    ...buses.on,
    ...pairTests(input),
    ...hullTests(input),
    ...shownTests(input),
    ...pullTests(input),
    ...triedTests(input),
    ...noiseTests(input),
  ];
};
