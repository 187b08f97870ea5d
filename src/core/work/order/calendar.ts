import { byCodeUnit } from '../../boat/ids.ts';
import { type DaysSpan, type Work, weekdays } from '../../boat/work.ts';
import { workDay } from '../../facts/work-day.ts';
import { addDays } from '../../units/add-days.ts';
import { dayNumber, weekdayOf } from '../../units/day-number.ts';
import type { CalendarDay, Job, PhaseWork } from '../../work-shape.ts';
import { skills } from './problem.ts';
import { daysWanted, type Taken, takenDays } from './taken-days.ts';

/** The days of one phase and who works on them. */
export interface WorkCalendar extends Pick<PhaseWork, 'perDay' | 'from' | 'hands' | 'days' | 'taken'> {
  /** half hours after midnight between which there is light outside */
  readonly light: readonly [number, number];
  /** the calendar day of day 0; absent where days are only counted */
  readonly first?: string;
}

/** What a calendar is made for: jobs that are still to do, from a day on. */
export interface CalendarInput {
  readonly work: Work;
  /** jobs still to do, in order of their ids */
  readonly jobs: readonly Job[];
  /** the day on which the phase begins */
  readonly first?: string;
  /** the day from which work is planned; days before it are over */
  readonly today?: string;
  /** days more to take ashore and with the mast down, where nobody entered any and fewer did not do */
  readonly stretch?: number;
  /** days by which those taken come sooner than their rule says */
  readonly sooner?: number;
}

/** Longest calendar, days: three years. */
const mostDays = 1100;

const slotsOf = (hours: number): number => Math.round(hours * 2);
const isIn = (date: string | undefined, spans: readonly DaysSpan[] | undefined): boolean =>
  date !== undefined && spans?.some(({ from, to }) => from <= date && date <= to) === true;

/** Who works, by id: those entered, or the owner alone, who can all of it. */
const handsOf = ({ hands }: Work): PhaseWork['hands'] =>
  (
    hands?.map(({ id, name, can = [], pace = 1 }) => ({ id, name, can: [...can], pace })) ?? [
      { id: 'owner', name: 'Owner', can: [...skills], pace: 1 },
    ]
  ).sort((a, b) => byCodeUnit(a.id, b.id));

/**
 * The days of a phase. Without a first day they are only counted: no dates, no rest days, and no window that needs a date. Where
 * jobs want her ashore or her mast down and no such days are entered, days are taken for them (`taken`) as `takenDays` tells.
 */
export const calendarOf = (input: CalendarInput): WorkCalendar => {
  const { work, jobs, first } = input;
  const from = slotsOf(work.fromH ?? workDay.from.value);
  // The last half hour of the clock stays free, so that what ends a day ends on it.
  const perDay = Math.min(slotsOf(work.hoursADay ?? workDay.hours.value), 47 - from);
  const hands = handsOf(work);
  const base = { work, jobs, perDay, hands, stretch: input.stretch ?? 0, sooner: input.sooner ?? 0 };
  const plain = daysFrom(input, hands, lengthOf(input, perDay));
  const taken = takenDays({ ...base, days: plain, isDated: first !== undefined });
  return {
    perDay,
    from,
    hands,
    light: [slotsOf(work.light?.fromH ?? workDay.lightFrom.value), slotsOf(work.light?.toH ?? workDay.lightTo.value)],
    ...(first === undefined ? {} : { first }),
    days: plain.map((day) => withTaken(day, taken, work)),
    taken,
  };
};

const withTaken = (day: CalendarDay, taken: readonly Taken[], { moves }: Work): CalendarDay => {
  const own = taken.filter(({ from, to }) => from <= day.day && day.day <= to);
  const afloat = day.afloat && own.every(({ what }) => what !== 'ashore');
  return {
    ...day,
    afloat,
    mast: own.some(({ what }) => what === 'mast-down') ? 'down' : day.mast,
    moves: afloat && (moves === undefined || day.date === undefined || day.moves),
  };
};

const daysFrom = ({ work, first, today }: CalendarInput, hands: PhaseWork['hands'], count: number): CalendarDay[] =>
  Array.from({ length: count }, (_, day) => {
    const date = first === undefined ? undefined : addDays(first, day);
    const isOver = date !== undefined && today !== undefined && date < today;
    const weekday = date === undefined ? undefined : weekdays[weekdayOf(date)];
    const isOff =
      isOver || isIn(date, work.left) || (weekday !== undefined && work.restDays?.includes(weekday) === true);
    const isAway = (id: string): boolean => isIn(date, work.hands?.find((hand) => hand.id === id)?.away);
    const afloat = !isIn(date, work.ashore);
    return {
      day,
      ...(date === undefined ? {} : { date }),
      hands: isOff ? [] : hands.map(({ id }) => id).filter((id) => !isAway(id)),
      afloat,
      mast: isIn(date, work.mastDown) ? 'down' : 'up',
      foul: isIn(date, work.foul),
      moves: afloat && (date === undefined || work.moves === undefined || isIn(date, work.moves)),
      left: isIn(date, work.left),
    };
  });

/**
 * Days enough for all jobs one after another at half pace, and all waits; to the end of every window and delivery entered. What
 * takes longer still is told to take too few days.
 */
const lengthOf = ({ work, jobs, first, today, stretch = 0 }: CalendarInput, perDay: number): number => {
  const needed = daysWanted(jobs, perDay);
  const rest = 7 / (7 - (work.restDays?.length ?? 0));
  const own = Math.ceil(needed.work * 2 * rest + needed.waits) + 14 + 2 * stretch;
  if (first === undefined) return Math.min(mostDays, own);
  const spans = [work.ashore, work.mastDown, work.foul, work.left, ...(work.hands ?? []).map(({ away }) => away)];
  const dates = [
    ...spans.flatMap((list) => list ?? []).map(({ to }) => to),
    ...jobs.flatMap(({ waitsFor, day }) => [
      ...waitsFor.flatMap(({ on }) => on ?? []),
      ...(day === undefined ? [] : [day]),
    ]),
    ...(today === undefined ? [] : [today]),
  ];
  const latest = Math.max(0, ...dates.map((date) => dayNumber(date) - dayNumber(first)));
  return Math.min(mostDays, own + latest);
};
