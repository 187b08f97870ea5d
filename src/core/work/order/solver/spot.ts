import { daySlots } from './ground.ts';

/** Where a job lies: clocks are half hours from the first midnight of the calendar. */
export interface Spot {
  readonly begin: number;
  readonly end: number;
  readonly hands: readonly number[];
}

/** The day on which a job at a spot ends. */
export const lastDayOf = ({ begin, end }: Spot): number =>
  end === begin ? Math.floor(begin / daySlots) : Math.floor((end - 1) / daySlots);
