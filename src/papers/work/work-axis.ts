import type { CalendarDay, PhaseWork } from '../../core/work-shape.ts';
import { workingDays } from './working-days.ts';

/** One day of one phase on the picture, or several on which nothing is done. */
export interface WorkColumn {
  readonly phase: number;
  /** first and last day of it; the same but for days drawn together */
  readonly day: number;
  readonly lastDay: number;
  readonly leftMm: number;
  readonly rightMm: number;
  /** where the hours of work end and the night begins */
  readonly nightMm: number;
  readonly calendar: CalendarDay | undefined;
  readonly isRest: boolean;
  /** whether a phase begins with it */
  readonly isFirst: boolean;
}

/** Days across, each with its hours of work and, narrow, the night after them. */
export interface WorkAxis {
  readonly columns: readonly WorkColumn[];
  readonly widthMm: number;
  /** where a half hour of a day stands, counted from the beginning of work; what lies outside comes to the nearest edge */
  readonly xOf: (spot: { readonly phase: number; readonly day: number; readonly slot: number }) => number;
  /** whether any of the days from one to another is on it */
  readonly holds: (phase: number, from: number, to: number) => boolean;
}

const restMm = 7.5;
const nightMm = 2.4;
/** So many days in a row without work are drawn as one. */
const idleDays = 4;
const slotsOfDay = 48;

interface Day {
  readonly phase: number;
  readonly perDay: number;
  readonly day: number;
  readonly lastDay: number;
  readonly calendar: CalendarDay | undefined;
  readonly isIdle: boolean;
  readonly isFirst: boolean;
}

/** A stuck phase has no end: so many of its days are shown. */
const stuckDays = 10;

/** Days on which nothing is done, side by side, taken together. */
const runsOf = (days: readonly Day[]): Day[][] => {
  const runs: Day[][] = [];
  for (const day of days) {
    const last = runs.at(-1);
    if (day.isIdle && last?.[0]?.isIdle === true) last.push(day);
    else runs.push([day]);
  }
  return runs;
};

const daysOf = (phase: PhaseWork): Day[] => {
  const busy = new Set(workingDays(phase));
  const last = phase.order?.cost.lastDay ?? Math.min(stuckDays, phase.days.length) - 1;
  const days = Array.from({ length: last + 1 }, (_, day): Day => {
    const calendar = phase.days[day];
    const isIdle = !busy.has(day) && phase.order !== undefined;
    return { phase: phase.phase, perDay: phase.perDay, day, lastDay: day, calendar, isIdle, isFirst: day === 0 };
  });
  return runsOf(days).flatMap((run) => {
    const [first] = run;
    return first !== undefined && run.length >= idleDays ? [{ ...first, lastDay: first.day + run.length - 1 }] : run;
  });
};

const isRest = ({ calendar, day, lastDay }: Day): boolean => (calendar?.hands.length ?? 0) === 0 || lastDay > day;

/** Every day of some phases one after the other, cut into axes no wider than `widthMm`; `Infinity` makes one of all. */
export const workAxes = (
  phases: readonly PhaseWork[],
  { dayMm, widthMm }: { readonly dayMm: number; readonly widthMm: number },
): WorkAxis[] => {
  const parts: WorkColumn[][] = [[]];
  let leftMm = 0;
  for (const one of phases.flatMap(daysOf)) {
    const rest = isRest(one);
    const ownMm = rest ? restMm : dayMm;
    if (leftMm + ownMm > widthMm + 1e-6) {
      parts.push([]);
      leftMm = 0;
    }
    const rightMm = leftMm + ownMm;
    const { phase, day, lastDay, calendar, isFirst } = one;
    const column = { phase, day, lastDay, calendar, isFirst, isRest: rest, leftMm, rightMm };
    parts.at(-1)?.push({ ...column, nightMm: rest ? rightMm : rightMm - nightMm });
    leftMm = rightMm;
  }
  const perDay = new Map(phases.map((phase) => [phase.phase, phase.perDay]));
  return parts.filter((columns) => columns.length > 0).map((columns) => axisOf(columns, perDay));
};

const within = (column: WorkColumn, { day, slot }: { day: number; slot: number }, perDay: number): number => {
  const { leftMm, rightMm } = column;
  if (column.isRest) {
    const share = (day - column.day + slot / slotsOfDay) / (column.lastDay - column.day + 1);
    return leftMm + (rightMm - leftMm) * Math.min(1, share);
  }
  if (slot <= perDay) return leftMm + ((column.nightMm - leftMm) * slot) / perDay;
  return (
    column.nightMm + ((rightMm - column.nightMm) * Math.min(slot - perDay, slotsOfDay - perDay)) / (slotsOfDay - perDay)
  );
};

const axisOf = (columns: readonly WorkColumn[], perDay: ReadonlyMap<number, number>): WorkAxis => {
  const widthMm = columns.at(-1)?.rightMm ?? 0;
  const [first] = columns;
  const isBefore = (phase: number, day: number): boolean =>
    first !== undefined && (phase < first.phase || (phase === first.phase && day < first.day));
  return {
    columns,
    widthMm,
    holds: (phase, from, to) => columns.some((own) => own.phase === phase && own.day <= to && from <= own.lastDay),
    xOf: ({ phase, day, slot }) => {
      const column = columns.find((own) => own.phase === phase && own.day <= day && day <= own.lastDay);
      if (column !== undefined) return within(column, { day, slot }, perDay.get(phase) ?? slotsOfDay);
      if (isBefore(phase, day)) return 0;
      // a day after the last of its phase comes to where the next begins
      return columns.find((own) => own.phase > phase)?.leftMm ?? widthMm;
    },
  };
};
