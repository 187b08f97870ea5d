import type { Job, PhaseWork } from '../../../../core/work-shape.ts';
import { dayOfPhase } from '../../../../papers/work/day-words.ts';
import type { PictureInput } from '../../../../papers/work/picture-input.ts';

/** The jobs that begin on one day of a phase; those that have no day come last. */
export interface JobGroup {
  readonly key: string;
  readonly phase: PhaseWork;
  /** absent for jobs left out, and where there is no order */
  readonly day?: number;
  readonly title: string | undefined;
  readonly jobs: readonly Job[];
  readonly doneCount: number;
}

/** The jobs of all phases by the day on which they begin, each day in the order of its numbers. */
export const jobsByDay = ({ phases, numbers, done }: Pick<PictureInput, 'phases' | 'numbers' | 'done'>): JobGroup[] =>
  phases.flatMap((phase) => {
    const dayOf = new Map((phase.order?.starts ?? []).map(({ job, day }) => [job, day]));
    const turn = ({ id }: Job): number => numbers.get(id) ?? Number.MAX_SAFE_INTEGER;
    const days = [...new Set(phase.jobs.map(({ id }) => dayOf.get(id)))].sort(
      (one = Infinity, other = Infinity) => one - other,
    );
    return days.map((day): JobGroup => {
      const jobs = phase.jobs.filter(({ id }) => dayOf.get(id) === day).sort((one, other) => turn(one) - turn(other));
      return {
        key: `${phase.phase}.${day ?? ''}`,
        phase,
        ...(day === undefined ? {} : { day }),
        title: day === undefined ? undefined : dayOfPhase(phase, day),
        jobs,
        doneCount: jobs.filter(({ id }) => done.has(id)).length,
      };
    });
  });
