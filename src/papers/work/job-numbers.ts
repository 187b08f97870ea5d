import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import type { PlanWork } from '../../core/work-shape.ts';

/** The number of every job, in the order in which they begin, through all phases; where there is no order, as they are listed. */
export const jobNumbers = ({ phases }: Pick<PlanWork, 'phases'>): ReadonlyMap<string, number> => {
  const ids = phases.flatMap(({ jobs, order }) => {
    const starts = new Map((order?.starts ?? []).map((start) => [start.job, start]));
    return jobs
      .flatMap((job, listed) => {
        const start = starts.get(job.id);
        if (job.leftOut !== undefined || (order !== undefined && start === undefined)) return [];
        return [{ id: job.id, day: start?.day ?? 0, slot: start?.slot ?? listed }];
      })
      .sort((one, other) => one.day - other.day || one.slot - other.slot || byCodeUnit(one.id, other.id))
      .map(({ id }) => id);
  });
  return new Map(ids.map((id, at) => [id, at + 1]));
};
