import { dayNumber } from '../../units/day-number.ts';
import type { WorkCalendar } from './calendar.ts';

/** The number of a day in a calendar, from 0; absent where its days are only counted. A day before the first is the first. */
export const dayIndex = ({ first }: Pick<WorkCalendar, 'first'>, on: string): number | undefined =>
  first === undefined ? undefined : Math.max(0, dayNumber(on) - dayNumber(first));
