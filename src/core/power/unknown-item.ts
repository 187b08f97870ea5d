import { compassLimits } from '../facts/compass-figures.ts';

/**
 * What is to be said of a thing whose safe distance nobody knows, by how far it is from a compass: warn under 1 m, advise
 * under the 5 m of the standard.
 *
 * @example unknownItem(2) // 'advice'
 */
export const unknownItem = (distanceM: number): 'warn' | 'advice' | 'ok' => {
  if (distanceM < compassLimits.unknownItemWarnBelow.value) return 'warn';
  return distanceM < compassLimits.unknownItem.value ? 'advice' : 'ok';
};
