import type { BusEntry } from '../../plan-shape.ts';
import { busModel } from './bus-model.ts';
import { type Cause, diagnose } from './diagnose.ts';
import type { Found } from './judge.ts';
import { type NextMeasurement, nextMeasurement } from './next-measurement.ts';
import { type ReadingKey, soundRanges } from './sound-ranges.ts';

/** What is wrong with one bus of a plan, and what to measure next; no cause where nothing of it was read. */
export interface BusDiagnosis {
  readonly causes: readonly Cause[];
  readonly next?: NextMeasurement;
}

/** The id under which a reading of a bus is kept: that of its test, where the sheet has one. */
export const readingTestId = (bus: string, key: ReadingKey): string => {
  const [test = '', spot] = key.split(':');
  return `dock/${test}:${bus}${spot === undefined ? '' : `:${spot}`}`;
};

/** The causes of one bus by all that was found of it; `of` gives what was found at a test. Pure. */
export const busDiagnosis = (bus: BusEntry, of: (id: string) => Found | undefined): BusDiagnosis => {
  const model = busModel(bus);
  const readings = new Map<ReadingKey, number>();
  for (const [key] of soundRanges(model)) {
    const found = of(readingTestId(bus.id, key));
    if (found !== undefined) readings.set(key, Number(found));
  }
  if (readings.size === 0) return { causes: [] };
  const causes = diagnose(model, readings);
  const next = nextMeasurement(causes, readings);
  return { causes, ...(next === undefined ? {} : { next }) };
};
