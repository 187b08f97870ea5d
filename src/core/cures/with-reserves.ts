import { blackoutTable, type LaidBoat } from '../blackouts/blackout-table.ts';
import type { BlackoutEntry, BlackoutParts, Loss, VitalEntry } from '../blackouts-shape.ts';
import type { Boat, Need } from '../boat/boat-schema.ts';
import { boatText } from '../boat/boat-text.ts';
import { remember } from '../boat/remember.ts';
import type { Reaches } from '../readings/reaches.ts';
import { waysInto } from '../readings/ways-in.ts';
import { asCure } from './as-cure.ts';
import type { Candidate } from './candidate.ts';
import { failureKey, failuresOf, type ReserveTrials, reserveTrials } from './reserve-trials.ts';
import { editedBoat } from './try-cure.ts';

/** Candidates tried for one vital reading, and cures shown of it. */
const atMost = { tried: 3, shown: 2 } as const;

const needOf = ({ reading, instance, at }: Omit<Loss, 'perhaps'>): string => `${reading} ${instance ?? ''} ${at}`;

interface ReserveInput {
  readonly laid: LaidBoat;
  readonly reaches: Reaches;
  readonly phase: number;
  readonly table: BlackoutParts;
}

interface Trial {
  readonly trials: ReserveTrials;
  readonly boat: Boat;
  readonly vital: VitalEntry;
  readonly entries: readonly BlackoutEntry[];
  /** needs that are met now */
  readonly met: readonly Need[];
}

/**
 * The points, by key, that a candidate frees: none of their failures takes the reading any more, nor anything it did not take
 * before. None where the cure loses something itself.
 */
const freedBy = (candidate: Candidate, { trials, boat, vital, entries, met: now }: Trial): ReadonlySet<string> => {
  const none: ReadonlySet<string> = new Set();
  const after = trials.tried({ candidate, vital, entries, boat });
  if (after === undefined) return none;
  const { met, loses: losesOf } = after.with(boat.needs);
  const stillMet = new Set(met.map(needOf));
  if (now.some((need) => !stillMet.has(needOf(need)))) return none;
  const isFreed = (entry: BlackoutEntry): boolean => {
    const taken = new Set(entry.loses.map(needOf));
    return failuresOf(entry).every((failure) => {
      const loses = losesOf.get(failureKey(failure));
      return loses?.every((loss) => taken.has(needOf(loss))) === true;
    });
  };
  const freed = entries.filter(isFreed).map(failureKey);
  // the last question, as it takes longest: could the boat be saved so
  return freed.length === 0 || editedBoat(boat, candidate) === undefined ? none : new Set(freed);
};

const withCures = (trial: Trial): VitalEntry => {
  const { vital, trials } = trial;
  const found: { candidate: Candidate; frees: ReadonlySet<string> }[] = [];
  const freed = new Set<string>();
  for (const candidate of trials.candidatesFor(trial).slice(0, atMost.tried)) {
    if (found.length >= atMost.shown || freed.size === vital.points.length) break;
    const frees = freedBy(candidate, trial);
    if ([...frees].every((key) => freed.has(key))) continue;
    found.push({ candidate, frees });
    for (const key of frees) freed.add(key);
  }
  return {
    ...vital,
    points: vital.points.map((point) => {
      const cure = found.findIndex(({ frees }) => frees.has(failureKey(point)));
      return cure < 0 ? point : { ...point, cure };
    }),
    cures: found.map(({ candidate }) => asCure(candidate)),
  };
};

const vitalsWithCures = (input: ReserveInput): VitalEntry[] => {
  const { laid, reaches, phase, table } = input;
  const entryOf = new Map(table.blackouts.map((entry) => [failureKey(entry), entry]));
  const { boat } = laid.index;
  const trials = reserveTrials(laid.lines, { laid, reaches, phase });
  const met = boat.needs.filter((need) => reaches.network.nodesOf.has(need.at) && waysInto(reaches, need).length > 0);
  return table.vitals.map((vital) => {
    if (vital.points.length === 0) return vital;
    const entries = vital.points.flatMap((point) => entryOf.get(failureKey(point)) ?? []);
    return withCures({ trials, boat, vital, entries, met });
  });
};

/** Cures hang on the boat, on what is needed where and on her layouts, not on how much a need is wished for: they are kept meanwhile. */
const keptCures = remember({
  most: 6,
  keyOf: ({ laid: { index, buses }, phase }: ReserveInput) => {
    const { accepted: _, labels: __, orders: ___, needs: wished, ...boat } = index.boat;
    const needs = JSON.stringify(wished.map(({ must: ____, ...need }) => need));
    return `${phase} ${boatText(boat)} ${needs} ${JSON.stringify(buses.map(({ id, walk }) => [id, walk]))}`;
  },
  find: vitalsWithCures,
});

/**
 * The blackout table with, for each vital reading that one failure takes, the cheapest edits that keep it: each was made on
 * the boat, and the failure then neither takes the reading nor anything it did not take before. Pure.
 */
export const withReserves = (laid: LaidBoat, reaches: Reaches, phase: number): BlackoutParts => {
  const table = blackoutTable(laid, reaches, phase);
  if (table.vitals.every(({ points }) => points.length === 0)) return table;
  return { ...table, vitals: keptCures({ laid, reaches, phase, table }) };
};
