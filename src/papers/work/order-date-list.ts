import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import type { ListTable } from '../table/list-table.ts';
import { dayOfPhase } from './day-words.ts';
import { jobNumbers } from './job-numbers.ts';
import { jobWords } from './job-words.ts';
import { itemName, workNames } from './work-names.ts';

/** By when each item is to be ordered so that it is there when its job begins. */
export const orderDateList = (boat: Boat, plan: Plan): ListTable => {
  const names = workNames(boat, plan);
  const work = plan.work ?? { phases: [], leaving: [] };
  const numbers = jobNumbers(work);
  const all = work.phases.flatMap((phase) => {
    const jobs = new Map(phase.jobs.map((job) => [job.id, job]));
    return phase.orderBy.map((by) => ({ phase, by, job: jobs.get(by.job) }));
  });
  return {
    id: 'order-dates',
    title: 'Order dates',
    says: 'The last day to order each thing so that it is there when it is wanted, by the days to come that were entered or are usual.',
    columns: [
      { id: 'order', head: 'order by', share: 0.9 },
      { id: 'item', head: 'item', share: 2.4 },
      { id: 'days', head: 'days to come', kind: 'figure', digits: 0, share: 0.6 },
      { id: 'wanted', head: 'wanted on', share: 0.9 },
      { id: 'number', head: 'job no.', kind: 'figure', digits: 0, share: 0.5 },
      { id: 'job', head: 'for the job', share: 1.8 },
      { id: 'id', head: 'id', kind: 'label', printed: false },
    ],
    rows: all
      .sort((one, other) => one.by.day - other.by.day || byCodeUnit(one.by.item, other.by.item))
      .map(({ phase, by, job }) => [
        by.on ?? (by.day < 0 ? `${-by.day} days before the first` : dayOfPhase(phase, by.day)),
        itemName(names, by.item),
        by.leadDays,
        dayOfPhase(phase, by.wantedOn),
        numbers.get(by.job),
        job === undefined ? undefined : jobWords(names, job),
        by.item,
      ]),
    empty: 'Nothing that is ordered holds the work up.',
  };
};
