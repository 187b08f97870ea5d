import { keptFor } from '../../boat/kept-for.ts';
import { cableGrades } from '../../facts/cable-grades.ts';
import type { BusEntry } from '../../plan-shape.ts';
import { devicesAlong, middleStep } from './bus-ladder.ts';

/** One bus as it is planned, in what tells its faults apart. Steps are those of its trunk, from the first end on. */
export interface BusModel {
  readonly atM: readonly number[];
  /** how many devices hang at each step */
  readonly devices: readonly number[];
  /** of one data wire */
  readonly ohmPerM: number;
  /** how far the length may be off, as a share of it */
  readonly lengthDoubt: number;
  readonly feedStep: number;
  readonly middleStep: number;
  /** where the device with the lowest volts hangs */
  readonly farStep: number;
  /** from the device next to the feed to that one, with everything drawing its most */
  readonly lossV: number;
}

const feedStepOf = (bus: BusEntry): number =>
  Math.max(
    0,
    bus.walk.findIndex(({ tees }) => tees.includes('feed')),
  );

/** What is looked at of a bus of a plan; kept, so that its faults are worked out once. */
export const busModel = keptFor((bus: BusEntry): BusModel => {
  const lowest = bus.volts.map(({ lowestV }) => lowestV);
  const leastV = Math.min(...lowest);
  const far = bus.volts.find(({ lowestV }) => lowestV === leastV)?.port;
  const farStep = bus.walk.findIndex(({ tees }) => far !== undefined && tees.includes(far));
  return {
    atM: bus.walk.map((_, step) => bus.along?.[step]?.alongM ?? 0),
    devices: devicesAlong(bus),
    ohmPerM: cableGrades[bus.grade].dataOhmPerM.value,
    lengthDoubt: bus.lengthM === 0 ? 0 : (bus.longestM - bus.lengthM) / bus.lengthM,
    feedStep: feedStepOf(bus),
    middleStep: middleStep(bus),
    farStep: farStep < 0 ? bus.walk.length - 1 : farStep,
    lossV: lowest.length === 0 ? 0 : Math.max(...lowest) - leastV,
  };
});
