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

/** Good boats to damage. */
export interface Seeds {
  /** boats that together have something in every part of the file; the smaller one is, the more often she is among them */
  readonly small: readonly Seed[];
  /** a whole boat, as a person has one */
  readonly whole: Seed;
}

/** How often a boat is in the lot: the time for her goes by her size, and each of her fields is to be hit about as often. */
const timesIn = ({ places }: Seed): number => Math.round(60 / Math.sqrt(places.length));

/** Good boats to damage; every name has the values of a boat with everything. `whole` is the text of a whole boat’s file. */
export const boatSeeds = (whole: string): Seeds => {
  // reason: the boat as the file has it, by its names alone
  const full = JSON.parse(writeBoat(aFullBoat())) as BoatData;
  const small = startSeeds(smallBoats(), full);
  const [demo] = startSeeds([JSON.parse(whole) as BoatData], full);
  if (demo === undefined) throw new Error('there is no whole boat');
  return { small: small.flatMap((seed) => Array<Seed>(Math.max(1, timesIn(seed))).fill(seed)), whole: demo };
};

/** One damage in so many is done to a whole boat, which takes fifty times as long to read. */
const wholeEvery = 500;

const nextSeed = ({ small, whole }: Seeds, turn: number, lot: Lot): Seed =>
  (turn % wholeEvery === wholeEvery - 1 ? undefined : small[lot(small.length)]) ?? whole;

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
  seeds: Seeds,
  { count, lot, textEvery, writeEvery }: { count: number; lot: Lot; textEvery: number; writeEvery: number },
): BoatsTried => {
  const told: BoatsTried = { tried: 0, texts: 0, good: 0, written: 0, faults: [] };
  for (let turn = 0; turn < count && told.faults.length < faultsAtMost; turn += 1) {
    const seed = nextSeed(seeds, turn, lot);
    const asText = turn % textEvery === 0;
    const damaged = asText ? mutateBoat(seed, lot) : mutateData(seed, lot);
    const outcome = typeof damaged === 'string' && asText ? tryBoat(damaged) : tryData(seed.data, damaged);
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
