import type { BoatLog } from '../log/boat-log.ts';
import type { Plan } from '../plan-shape.ts';
import type { Job, PhaseWork } from '../work-shape.ts';
import { doneJobs } from './ticks.ts';

/** How much of something is done. */
export interface Part {
  readonly done: number;
  readonly total: number;
}

/** How far the work of a boat has come. */
export interface Progress {
  readonly jobs: Part;
  /** usual hours of the jobs, for who does them */
  readonly hoursH: Part;
  readonly cables: Part;
  readonly readings: Part;
  /** days on which there is still something to do, by the order as it stands; absent where there is none */
  readonly daysLeft?: number;
  /** the last of them, where the calendar has dates */
  readonly lastOn?: string;
}

const halfHours = 2;

const cablesOf = ({ kind, about }: Job, lines: ReadonlySet<string>): string[] =>
  kind === 'pull' || kind === 'mast-pull' ? about.filter((id) => lines.has(id)) : [];

const countsOf = <One>(all: readonly One[], isDone: (one: One) => boolean): Part => ({
  done: all.filter(isDone).length,
  total: all.length,
});

const hoursOf = (jobs: readonly Job[]): number =>
  jobs.reduce((sum, { slots, people }) => sum + slots * people, 0) / halfHours;

/** A reading is proved where a recording proved it, or where somebody saw it at its screen and wrote down that it was right. */
const readingsOf = ({ readings, tests }: Pick<Plan, 'readings' | 'tests'>, log: Pick<BoatLog, 'readings'>): Part => {
  const key = (reading: string, instance: number | undefined, at: string): string =>
    `${reading} ${instance ?? ''} ${at}`;
  const seen = new Set(
    tests.flatMap(({ id, test, reading, instance, about: [at = ''] }) =>
      test === 'shown' && reading !== undefined && log.readings.get(id)?.right === true
        ? [key(reading, instance, at)]
        : [],
    ),
  );
  return countsOf(
    readings,
    ({ reading, instance, at, rests }) => rests === 'proved' || seen.has(key(reading, instance, at)),
  );
};

const daysLeft = (
  phases: readonly PhaseWork[],
  done: ReadonlyMap<string, string>,
): Pick<Progress, 'daysLeft' | 'lastOn'> => {
  if (phases.some(({ order }) => order === undefined)) return {};
  const days = new Set<string>();
  let lastOn: string | undefined;
  for (const { phase, order, days: calendar } of phases) {
    for (const { job, day, lastDay, hands } of order?.starts ?? []) {
      if (done.has(job) || hands.length === 0) continue;
      for (let at = day; at <= lastDay; at += 1) if ((calendar[at]?.hands.length ?? 0) > 0) days.add(`${phase} ${at}`);
      const on = calendar[lastDay]?.date;
      if (on !== undefined && (lastOn === undefined || on > lastOn)) lastOn = on;
    }
  }
  return { daysLeft: days.size, ...(lastOn === undefined ? {} : { lastOn }) };
};

/** How far the work has come by the log: jobs, hours, cables pulled, readings proved, days left. A job left out counts as none. Pure. */
export const progressOf = (
  plan: Pick<Plan, 'lines' | 'readings' | 'tests' | 'work'>,
  log: Pick<BoatLog, 'readings' | 'ticks'>,
): Progress => {
  const phases = plan.work?.phases ?? [];
  const done = doneJobs(log);
  const jobs = phases.flatMap((phase) => phase.jobs).filter(({ leftOut }) => leftOut === undefined);
  const finished = jobs.filter(({ id }) => done.has(id));
  const lines = new Set(plan.lines.map(({ id }) => id));
  const cables = [...new Set(jobs.flatMap((job) => cablesOf(job, lines)))];
  const open = new Set(jobs.filter(({ id }) => !done.has(id)).flatMap((job) => cablesOf(job, lines)));
  return {
    jobs: countsOf(jobs, ({ id }) => done.has(id)),
    hoursH: { done: hoursOf(finished), total: hoursOf(jobs) },
    cables: countsOf(cables, (line) => !open.has(line)),
    readings: readingsOf(plan, log),
    ...(phases.length === 0 ? {} : daysLeft(phases, done)),
  };
};
