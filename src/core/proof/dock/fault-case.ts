import type { BusModel } from './bus-model.ts';
import type { ReadingRange } from './reading-range.ts';
import type { ReadingKey } from './sound-ranges.ts';
import { bothEnds, counted, deviceCount } from './sound-ranges.ts';

/** One way a fault can be, and what it makes of the readings that it changes. `step`: where on the trunk. */
export interface FaultCase {
  readonly step?: number;
  readonly changes: readonly (readonly [ReadingKey, ReadingRange])[];
}

export const steps = ({ atM }: BusModel): number[] => atM.map((_, step) => step);
/** Stretches of the trunk, each by the step it begins at, shorter than nothing left out. */
export const stretches = (model: BusModel): number[] =>
  steps(model).filter((step) => (model.atM[step + 1] ?? -1) > (model.atM[step] ?? 0));
export const allBut = (model: BusModel, step: number): number[] => bothEnds(model).filter((end) => end !== step);
export const ends = (model: BusModel): number[] => [...new Set(bothEnds(model))];
export const some = (model: BusModel): ReadingRange =>
  counted('devices', Math.ceil(deviceCount(model) / 2), deviceCount(model));
export const upTo = (most: number): ReadingRange => counted('devices', 0, Math.max(0, most));
