import type { Boat } from '../../core/boat/boat-schema.ts';
import { readingName } from '../../core/facts/reading-words.ts';
import type { Plan } from '../../core/plan-shape.ts';

/** What the refit keeps, brings and takes away, as far as readings go. */
export interface BeforeAndAfter {
  /** needs met whose reading was aboard before */
  readonly kept: number;
  /** needs met whose reading is new aboard */
  readonly gained: number;
  /** readings that a unit had before and nothing has afterwards, each with the units that had it */
  readonly lost: readonly string[];
}

/** Counts what is kept and gained among the needs, and names what is lost. */
export const beforeAndAfter = (boat: Boat, { readings, before }: Pick<Plan, 'readings' | 'before'>): BeforeAndAfter => {
  const names = new Map(boat.kit.map((unit) => [unit.id, unit.name]));
  const met = readings.filter((entry) => entry.arrives);
  const kept = met.filter((entry) => entry.seenBefore === true).length;
  const lost = new Map<string, string[]>();
  for (const entry of before) {
    if (entry.after) continue;
    const reading = readingName(entry);
    lost.set(reading, [...(lost.get(reading) ?? []), names.get(entry.at) ?? entry.at]);
  }
  return {
    kept,
    gained: met.length - kept,
    lost: [...lost].map(([reading, units]) => `${reading}, before at ${units.join(' and ')}`),
  };
};
