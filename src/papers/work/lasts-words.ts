import type { Job } from '../../core/work-shape.ts';
import { hoursWords } from './day-words.ts';

/** How long a job lasts for who does it, and what is usual. */
export const lastsWords = ({
  slots,
  hoursH: { least, most },
  people,
}: Pick<Job, 'slots' | 'hoursH' | 'people'>): string => {
  const usual = least === most ? hoursWords(least) : `${Number(least.toFixed(1))} to ${hoursWords(most)}`;
  return `${hoursWords(slots / 2)}${people === 2 ? ' for two' : ''}, usually ${usual}`;
};
