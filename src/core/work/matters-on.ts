import type { CalendarDay } from '../work-shape.ts';

/** Whether it matters on a day that a function is dark: pumps and their alarm whenever she floats, a charger while she is left, the others when she must be able to move. */
export const mattersOn = (
  { function: id, hard }: { readonly function: string; readonly hard: boolean },
  { afloat, left, moves }: Pick<CalendarDay, 'afloat' | 'left' | 'moves'>,
): boolean => {
  if (hard) return afloat;
  return id === 'shore-charging' ? left : afloat && moves;
};
