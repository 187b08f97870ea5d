import { layoutLimits } from '../facts/layout-limits.ts';
import { holdsSome, withoutLimits } from './clashing-limits.ts';
import type { Problem } from './problem.ts';

/** Work for one unit alone: a trunk of no length is found at once. */
const aloneWork = { work: 500 } as const;

/** The ports that no layout could serve even alone and without any limit: no way that takes a drop or trunk leads there. */
export const strandedDevices = (problem: Problem): string[] => {
  const free = withoutLimits(problem, layoutLimits);
  const places = free.places.map((place) => ({ ...place, spares: 0 }));
  return problem.devices
    .filter((device) => !holdsSome({ ...free, places, devices: [device] }, aloneWork))
    .map(({ id }) => id);
};
