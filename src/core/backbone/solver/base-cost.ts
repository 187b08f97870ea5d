import type { Ground } from './ground.ts';

/** What every layout of a ground costs besides trunk, drops and feed lead: terminators, feed, a tee for each thing served. */
export const baseCost = (ground: Ground): number => {
  const tees = ground.spares.reduce((sum, { count }) => sum + count, ground.devices.length);
  return ground.fixedCost + ground.feedCost + tees * ground.teeCost;
};
