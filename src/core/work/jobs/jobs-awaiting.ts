import type { Boat } from '../../boat/boat-schema.ts';
import type { Job } from '../../work-shape.ts';

/** Jobs with the items they take that are ordered and not there yet, and the day they are due where the supplier has said. */
export const jobsAwaiting = (jobs: readonly Job[], orders: Boat['orders'] = []): Job[] => {
  const open = new Map(
    orders.flatMap((order) =>
      order.state === 'order' || order.state === 'ordered' ? [[order.item, order] as const] : [],
    ),
  );
  return jobs.map((job) => {
    const awaited = job.materials.flatMap(({ item }) => {
      const order = open.get(item);
      if (order === undefined) return [];
      return [{ what: 'item' as const, id: item, ...(order.due === undefined ? {} : { on: order.due }) }];
    });
    return awaited.length === 0 ? job : { ...job, waitsFor: [...job.waitsFor, ...awaited] };
  });
};
