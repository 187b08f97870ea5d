import { aFullBoat } from '../../src/core/boat/full-boat.test-helper.ts';
import { writeBoat } from '../../src/core/boat/write-boat.ts';
import type { Lot } from './grow-value.ts';
import { mutateBoat, mutateData, type Seed, startSeeds } from './mutate-boat.ts';
import { type BoatData, smallBoats } from './small-boats.ts';
import { faultOfWriting, type Tried, tryBoat, tryData } from './try-boat.ts';

/** What became of damaged boat files. */
export interface BoatsTried {
  tried: number;
  /** those of them that were tried as the text of a file */
  texts: number;
  /** boats that were still good, and those of them that were written and read again */
  good: number;
  written: number;
  /** what went wrong, each kind once */
  readonly faults: string[];
}

/** Faults of which a run tells; more are seldom of another kind. */
const faultsAtMost = 20;

/** Good boats to damage: small ones mostly, as they are read fastest, and one with everything. */
export const boatSeeds = (): readonly Seed[] => {
  // reason: the boat as the file has it, by its names alone
  const full = JSON.parse(writeBoat(aFullBoat())) as BoatData;
  return startSeeds(smallBoats(), full);
};

const isWrittenWell = ({ boat }: Tried): string | undefined => {
  if (boat === undefined) return undefined;
  try {
    return faultOfWriting(boat);
  } catch (error) {
    return `cannot be written: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`;
  }
};

/**
 * Damages boat files one after the other and tries each: it must be read or refused in words, with a place that is there.
 * One in so many is tried as the text of a file, the others as what the text holds; of the good ones one in so many is
 * written and read again.
 */
export const fuzzBoats = (
  seeds: readonly Seed[],
  { count, lot, textEvery, writeEvery }: { count: number; lot: Lot; textEvery: number; writeEvery: number },
): BoatsTried => {
  const told: BoatsTried = { tried: 0, texts: 0, good: 0, written: 0, faults: [] };
  for (let turn = 0; turn < count && told.faults.length < faultsAtMost; turn += 1) {
    const seed = seeds[lot(seeds.length)];
    if (seed === undefined) break;
    const asText = turn % textEvery === 0;
    const damaged = asText ? mutateBoat(seed, lot) : mutateData(seed, lot);
    const outcome = typeof damaged === 'string' && asText ? tryBoat(damaged) : tryData(seed, damaged);
    told.tried += 1;
    if (asText) told.texts += 1;
    if (outcome.boat !== undefined) told.good += 1;
    const isForWriting = outcome.boat !== undefined && told.good % writeEvery === 0;
    if (isForWriting) told.written += 1;
    const fault = outcome.fault ?? (isForWriting ? isWrittenWell(outcome) : undefined);
    const isNew = fault !== undefined && !told.faults.some((known) => known.includes(fault.slice(0, 60)));
    if (isNew) told.faults.push(`turn ${turn}: ${fault.slice(0, 1500)}`);
  }
  return told;
};
