import type { LineEntry, Plan } from '../../core/plan-shape.ts';

/** The lines of a plan that run through each way, by way id. */
export const linesByWay = ({ lines }: Pick<Plan, 'lines'>): ReadonlyMap<string, readonly LineEntry[]> => {
  const byWay = new Map<string, LineEntry[]>();
  for (const line of lines) {
    for (const way of new Set(line.ways)) byWay.set(way, [...(byWay.get(way) ?? []), line]);
  }
  return byWay;
};
