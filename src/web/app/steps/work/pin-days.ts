import type { PhaseWork } from '../../../../core/work-shape.ts';
import { dateAfter } from '../../../../papers/work/day-words.ts';
import type { WorkAxis } from '../../../../papers/work/work-axis.ts';

/** The date of the day at some place of the picture; undefined where days are only counted. */
export const dateAt = ({ columns }: WorkAxis, xMm: number): string | undefined => {
  const column = columns.find(({ rightMm }) => xMm < rightMm) ?? columns.at(-1);
  const date = column?.calendar?.date;
  if (column === undefined || date === undefined) return undefined;
  const { leftMm, rightMm, day, lastDay } = column;
  const share = Math.min(0.999, Math.max(0, (xMm - leftMm) / (rightMm - leftMm)));
  return dateAfter(date, Math.floor(share * (lastDay - day + 1)));
};

/** The date so many days of work after the one on which a job begins now: days of rest are passed over. */
export const datePast = (phase: PhaseWork, job: string, steps: 1 | -1): string | undefined => {
  const day = phase.order?.starts.find((start) => start.job === job)?.day;
  if (day === undefined) return undefined;
  const others = phase.days.filter(({ day: own, hands }) => hands.length > 0 && (steps > 0 ? own > day : own < day));
  return (steps > 0 ? others[0] : others.at(-1))?.date;
};
