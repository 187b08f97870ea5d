/** Something that runs: its mean current and the hours of the day it does. */
export interface DayRow {
  readonly currentA: number;
  readonly hours: number;
}

/** Charge a day takes, Ah: the sum of current x hours. */
export const dayAh = (rows: readonly DayRow[]): number =>
  rows.reduce((sumAh, { currentA, hours }) => sumAh + currentA * hours, 0);
