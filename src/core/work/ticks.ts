import type { BoatLog } from '../log/boat-log.ts';

const jobs = 'job/';

/** The id under which the log keeps that a job is done. */
export const jobTickId = (job: string): string => `${jobs}${job}`;

/** The id under which the log keeps that one step of a job is done. */
export const stepTickId = (job: string, step: string): string => `${jobs}${job}#${step}`;

/** The id under which the log keeps what is looked to at the end of a day of one phase. */
export const dayTickId = (of: { readonly phase: number; readonly day: number; readonly item: string }): string =>
  `day/${of.phase}.${of.day}:${of.item}`;

/** The id under which the log keeps what is done with a unit before it leaves. */
export const leavingTickId = (unit: string, step: string): string => `leaving/${unit}:${step}`;

/** Whether something is ticked. */
export const isTicked = (log: Pick<BoatLog, 'ticks'>, id: string): boolean => log.ticks.get(id)?.done === true;

/** The jobs that are done by the log, each with the day it was ticked on. */
export const doneJobs = ({ ticks }: Pick<BoatLog, 'ticks'>): ReadonlyMap<string, string> =>
  new Map(
    [...ticks].flatMap(([of, { done, at }]): [string, string][] =>
      done && of.startsWith(jobs) && !of.includes('#') ? [[of.slice(jobs.length), at.slice(0, 10)]] : [],
    ),
  );
