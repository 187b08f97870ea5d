import { byCodeUnit } from '../../boat/ids.ts';
import type { Work } from '../../boat/work.ts';
import type { CalendarDay, Job, Watched } from '../../work-shape.ts';
import { mattersOn } from '../matters-on.ts';
import type { WorkCalendar } from './calendar.ts';
import { dayIndex } from './day-index.ts';
import type { WatchedFunction, WorkDay, WorkItem, WorkProblem } from './problem.ts';
import { watchedNow } from './watched-now.ts';
import { hashed } from './work-hash.ts';

/** What is asked: the jobs and functions of one phase, her calendar, and what is done, by the day on which it was. */
export interface WorkProblemInput {
  readonly phase: number;
  /** all jobs of the phase, those done and left out too */
  readonly jobs: readonly Job[];
  readonly functions: readonly Watched[];
  readonly calendar: WorkCalendar;
  readonly work: Work;
  readonly done: ReadonlyMap<string, string>;
}

/** Half hours of the clock in hours, rounded up so that what cures has cured. */
const slotsIn = (hours: number | undefined): number => Math.ceil((hours ?? 0) * 2);

/**
 * The order of the work of one phase as a question. Equal work gives an equal problem, whatever the order of its lists; names and
 * texts do not count. Jobs that are done or left out are no part of it: what waited for them waits no longer, but for a cure that
 * is still under way, and for what a job left out waited for itself. Where there is one hand only, somebody is called in for what
 * takes two. Skills that nobody has are asked of nobody, but for radio where an installer is to do it.
 */
export const workProblem = (input: WorkProblemInput): WorkProblem => {
  const { phase, jobs, calendar, functions, done } = input;
  const open = jobs.filter(({ id, leftOut }) => leftOut === undefined && !done.has(id));
  const watched = watchedNow({ functions, open: new Set(open.map(({ id }) => id)), done });
  return hashed({
    format: 1,
    phase,
    perDay: calendar.perDay,
    from: calendar.from,
    days: calendar.days.map((day) => workDayOf(day, calendar.light, watched, input.work)),
    hands: calendar.hands.map(({ id, can }) => ({ id, can: [...can].sort(byCodeUnit) })),
    jobs: open.map((job) => itemOf(job, input)).sort((a, b) => byCodeUnit(a.id, b.id)),
    functions: watched,
  });
};

const workDayOf = (
  day: CalendarDay,
  light: WorkCalendar['light'],
  functions: readonly WatchedFunction[],
  work: Work,
): WorkDay => ({
  hands: [...day.hands].sort(byCodeUnit),
  afloat: day.afloat,
  mast: day.mast,
  foul: day.foul,
  light,
  counts: functions
    .filter(({ id, hard }) => mattersOn({ function: id, hard }, day) && (id !== 'ais' || work.aisWanted === true))
    .map(({ id }) => id),
});

const itemOf = (job: Job, input: WorkProblemInput): WorkItem => {
  const { calendar, work } = input;
  const window = windowOf(job, calendar);
  const doneBy = work.doneBy === undefined ? undefined : dayIndex(calendar, work.doneBy);
  const pinned = job.day === undefined ? undefined : dayIndex(calendar, job.day);
  const on = pinned ?? window;
  const isOver = on !== undefined && calendar.days[on]?.hands.length === 0 && pinned === undefined;
  return {
    id: job.id,
    slots: slotsWith(job, calendar),
    people: calendar.hands.length < 2 ? 1 : job.people,
    needs: needsOf(job, input),
    ...linksOf(job, input),
    ...(doneBy === undefined ? {} : { notAfter: doneBy }),
    ...(on === undefined || isOver ? {} : { on }),
    ...(job.hand === undefined || calendar.hands.every(({ id }) => id !== job.hand) ? {} : { hand: job.hand }),
    ...(job.state === undefined || window !== undefined ? {} : { state: job.state }),
    ...(job.mast === undefined || window !== undefined ? {} : { mast: job.mast }),
    outside: job.outside,
    aloft: job.aloft,
    apart: [...job.apart].sort(byCodeUnit),
  };
};

/** How long a job lasts, half hours: by the pace of the hand it is given to, else of the slowest. */
export const slotsWith = ({ slots, hand }: Job, { hands }: Pick<WorkCalendar, 'hands'>): number => {
  const paces = hands.filter(({ id }) => hand === undefined || id === hand).map(({ pace }) => pace);
  const pace = paces.length === 0 ? 1 : Math.max(...paces);
  return slots === 0 ? 0 : Math.max(1, Math.round(slots * pace));
};

const needsOf = ({ needs }: Job, { calendar, work }: WorkProblemInput): WorkItem['needs'] => {
  const isHad = (skill: string): boolean => calendar.hands.some(({ can }) => can.some((one) => one === skill));
  const isEntered = work.hands !== undefined;
  return needs.filter((skill) => isHad(skill) || (skill === 'radio' && isEntered)).sort(byCodeUnit);
};

/**
 * The day of a lift: she is lifted out on the first day ashore on which somebody works and in again on the first after the last;
 * the mast comes down and goes up on the first and last day on which it is down.
 */
const windowOf = ({ kind }: Job, { days }: WorkCalendar): number | undefined => {
  const isWorked = (day: CalendarDay): boolean => day.hands.length > 0;
  const dry = days.findLast(({ afloat }) => !afloat);
  switch (kind) {
    case 'haul-out':
      return days.find((day) => !day.afloat && isWorked(day))?.day;
    case 'launch':
      return dry === undefined ? undefined : days.find((day) => day.day > dry.day && isWorked(day))?.day;
    case 'mast-down':
      return days.find((day) => day.mast === 'down' && isWorked(day))?.day;
    case 'mast-up':
      return days.findLast((day) => day.mast === 'down' && isWorked(day))?.day;
    default:
      return undefined;
  }
};

/** What a job waits for that is still to be done, and the day before which it cannot begin. */
const linksOf = (job: Job, input: WorkProblemInput): Pick<WorkItem, 'after' | 'notBefore'> => {
  const { jobs, calendar, done } = input;
  const byId = new Map(jobs.map((one) => [one.id, one]));
  const after = new Map<string, number>();
  const seen = new Set<string>();
  const days = job.waitsFor.map(({ on }) => (on === undefined ? 0 : (dayIndex(calendar, on) ?? 0)));
  let notBefore = Math.max(0, ...days);
  const visit = (links: Job['after']): void => {
    for (const { job: id, waitH } of links) {
      const before = byId.get(id);
      if (before === undefined || id === job.id) continue;
      const wait = slotsIn(waitH) + slotsIn(before.waitH);
      const day = done.get(id);
      if (day !== undefined) {
        const end = (dayIndex(calendar, day) ?? 0) * 48 + calendar.from + calendar.perDay;
        notBefore = Math.max(notBefore, Math.floor((end + wait) / 48));
      } else if (before.leftOut === undefined) after.set(id, Math.max(wait, after.get(id) ?? 0));
      else if (!seen.has(id)) {
        seen.add(id);
        visit(before.after);
      }
    }
  };
  visit(job.after);
  return {
    after: [...after].map(([id, wait]) => ({ job: id, wait })).sort((a, b) => byCodeUnit(a.job, b.job)),
    notBefore,
  };
};
