import { byCodeUnit } from '../../boat/ids.ts';
import { addDays } from '../../units/add-days.ts';
import { dayNumber } from '../../units/day-number.ts';
import type { Job, PhaseWork, WorkOrder } from '../../work-shape.ts';
import type { WorkCalendar } from './calendar.ts';

/** How long something takes to come, days: an item of the shopping list or a paper, by id. */
export type LeadDays = ReadonlyMap<string, number>;

/**
 * The last day to order each item that is not there yet, or to ask for each paper: the day of the first job that wants it less
 * the days it takes to come, rest days counted, for parcels travel on them. It may lie before the first day.
 */
export const orderByDays = ({
  jobs,
  order,
  calendar,
  leads,
}: {
  readonly jobs: readonly Job[];
  readonly order: WorkOrder;
  readonly calendar: WorkCalendar;
  readonly leads: LeadDays;
}): PhaseWork['orderBy'] => {
  const dayOf = new Map(order.starts.map(({ job, day }) => [job, day]));
  const paperOf = new Map(jobs.flatMap(({ id, kind, about }) => (kind === 'paper' ? [[id, about[0] ?? id]] : [])));
  const first = new Map<string, { job: string; day: number }>();
  for (const { id, waitsFor, materials, after } of jobs) {
    const day = dayOf.get(id);
    if (day === undefined) continue;
    const papers = after.flatMap(({ job }) => paperOf.get(job) ?? []);
    for (const item of [...waitsFor.map((one) => one.id), ...materials.map((one) => one.item), ...papers]) {
      const known = first.get(item);
      if (known === undefined || day < known.day || (day === known.day && id < known.job))
        first.set(item, { job: id, day });
    }
  }
  return [...first]
    .flatMap(([item, { job, day: wantedOn }]) => {
      const leadDays = leads.get(item);
      if (leadDays === undefined) return [];
      const day = wantedOn - leadDays;
      const on = calendar.first === undefined ? undefined : dayBefore(calendar.first, day);
      return [{ item, job, wantedOn, leadDays, day, ...(on === undefined ? {} : { on }) }];
    })
    .sort((a, b) => byCodeUnit(a.item, b.item));
};

/** A day so many days after another, or before it. */
const dayBefore = (first: string, days: number): string => {
  if (days >= 0) return addDays(first, days);
  // Counting forward from a day that lies surely before keeps one way of counting.
  const base = `${String(Number(first.slice(0, 4)) - Math.ceil(-days / 365) - 1).padStart(4, '0')}-01-01`;
  return addDays(base, dayNumber(first) + days - dayNumber(base));
};
