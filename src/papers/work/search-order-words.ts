import type { PlanWork } from '../../core/work-shape.ts';
import type { SearchWords } from '../lists/search-words.ts';
import { hoursWords } from './day-words.ts';

/** How the search for an order of the work stands, for somebody who waits. */
export const orderSearchWords = ({ phases }: Pick<PlanWork, 'phases'>): SearchWords => {
  const says = 'Looking for an order of the work with fewer dark hours.';
  if (phases.some(({ order }) => order === undefined)) return { says };
  const darkH = phases.reduce((sum, { order }) => sum + (order?.cost.darkH ?? 0), 0);
  const boundH = phases.reduce((sum, { order }) => sum + (order?.bound.darkH ?? 0), 0);
  return { says, found: `${hoursWords(darkH)} dark so far, no order has fewer than ${hoursWords(boundH)}.` };
};
