import { daySlots, type Ground, type GroundJob } from './ground.ts';

/** How soon jobs can begin and end at best, whoever else wants the hands. */
export interface Heads {
  /** the earliest clock from one on at which a job could begin; past the calendar where never */
  readonly beginFrom: (job: number, clock: number) => number;
  /** the earliest end of a job that begins at a clock */
  readonly endOf: (job: number, begin: number) => number;
}

const mayBeginOn = ({ present }: Ground, job: GroundJob, day: number): boolean => {
  const room = (job.window.to[day] ?? -1) - (job.window.from[day] ?? 0);
  if (day < job.first || day > job.lastBegin || day > job.last || room < 0) return false;
  if (job.slots > 0 && room < (job.days > 0 ? 1 : job.slots)) return false;
  return job.handSets.some((hands) => hands.every((hand) => present[hand]?.[day] === 1));
};

/** Looks up once, for each job and day, the next day on which it could begin. */
export const headsOf = (ground: Ground): Heads => {
  const never = ground.days * daySlots + daySlots;
  const nextDay = ground.jobs.map((job) => {
    const next = new Int32Array(ground.days + 2).fill(-1);
    for (let day = ground.days - 1; day >= 0; day -= 1)
      next[day] = mayBeginOn(ground, job, day) ? day : (next[day + 1] ?? -1);
    return next;
  });
  const beginOn = (number: number, day: number): number =>
    day * daySlots + ground.from + (ground.jobs[number]?.window.from[day] ?? 0);
  const beginFrom = (number: number, clock: number): number => {
    const job = ground.jobs[number];
    const days = nextDay[number];
    if (job === undefined || days === undefined || clock >= never) return never;
    const today = Math.max(0, Math.floor(clock / daySlots));
    const day = days[today] ?? -1;
    if (day < 0) return never;
    if (day > today) return job.days > 0 ? day * daySlots + ground.from : beginOn(number, day);
    const base = day * daySlots + ground.from;
    const begin = job.days > 0 ? base : Math.max(clock, beginOn(number, day));
    const last = job.days > 0 ? base : base + (job.window.to[day] ?? 0) - job.slots;
    if (clock <= last && begin <= last) return begin;
    const later = days[today + 1] ?? -1;
    if (later < 0) return never;
    return job.days > 0 ? later * daySlots + ground.from : beginOn(number, later);
  };
  const endOf = (number: number, begin: number): number => {
    const job = ground.jobs[number];
    if (job === undefined || begin >= never) return never;
    return job.days > 0 ? begin + (job.days - 1) * daySlots + ground.perDay : begin + job.slots;
  };
  return { beginFrom, endOf };
};

/** The earliest ends of all jobs, given the order in which they wait for each other. */
export const earliestEnds = (ground: Ground, heads: Heads, order: readonly number[]): Float64Array => {
  const ends = new Float64Array(ground.jobs.length);
  for (const job of order) {
    let ready = 0;
    for (const { job: before, wait } of ground.jobs[job]?.preds ?? [])
      ready = Math.max(ready, (ends[before] ?? 0) + wait);
    ends[job] = heads.endOf(job, heads.beginFrom(job, ready));
  }
  return ends;
};
