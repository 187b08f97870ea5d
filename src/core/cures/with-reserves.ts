import { blackoutTable, type LaidBoat, tableLine } from '../blackouts/blackout-table.ts';
import { effectOf, type Hit } from '../blackouts/effect.ts';
import { everyFailure } from '../blackouts/every-failure.ts';
import { heldNeeds, lossesOf } from '../blackouts/need-losses.ts';
import { needWays } from '../blackouts/need-ways.ts';
import { vitalsOf } from '../blackouts/vitals.ts';
import type { BlackoutEntry, BlackoutParts, Failure, Loss, VitalEntry } from '../blackouts-shape.ts';
import type { Boat, Need } from '../boat/boat-schema.ts';
import { boatText } from '../boat/boat-text.ts';
import { remember } from '../boat/remember.ts';
import type { Reaches } from '../readings/reaches.ts';
import { refitOf } from '../readings/refit.ts';
import { waysInto } from '../readings/ways-in.ts';
import { asCure } from './as-cure.ts';
import type { Candidate } from './candidate.ts';
import { type CureContext, cureContext } from './cure-context.ts';
import { graft } from './graft.ts';
import { reserveCandidates } from './reserve-candidates.ts';
import { edited, editedBoat } from './try-cure.ts';

/** Candidates tried for one vital reading, and cures shown of it. */
const atMost = { tried: 3, shown: 2 } as const;

const keyOf = ({ fails, how }: Failure): string => `${how} ${fails}`;
const needOf = ({ reading, instance, at }: Omit<Loss, 'perhaps'>): string => `${reading} ${instance ?? ''} ${at}`;

interface ReserveInput {
  readonly laid: LaidBoat;
  readonly reaches: Reaches;
  readonly phase: number;
  readonly table: BlackoutParts;
}

interface Trial {
  readonly context: CureContext;
  readonly input: ReserveInput;
  readonly vital: VitalEntry;
  readonly entries: readonly BlackoutEntry[];
  /** needs that are met now */
  readonly met: readonly Need[];
}

/** What the failures that took a vital reading do to the boat with a cure in her; nothing where the cure loses something itself. */
const afterwards = (boat: Boat, { context, input: { laid, phase }, entries, met: now }: Trial) => {
  const model = graft(laid, boat, { router: context.router, phase });
  const { index } = model.wired;
  const after = refitOf(index, () => model.wired.joins).reachesIn(phase);
  const ways = needWays(model.wired, after);
  const held = heldNeeds(boat.needs, after, ways);
  const met = new Set(held.map(({ need }) => needOf(need)));
  if (now.some((need) => !met.has(needOf(need)))) return undefined;
  const asked = new Set(entries.flatMap((entry) => [entry, ...(entry.also ?? [])].map(keyOf)));
  const hits = everyFailure(model).filter(({ failures: [own] }) => own !== undefined && asked.has(keyOf(own)));
  const lines = hits.flatMap((hit: Hit) => {
    const effect = effectOf(model, hit);
    const loses = lossesOf(effect, held, ways);
    return tableLine({ failures: hit.failures, effect, dark: [...effect.dark], still: [] }, loses);
  });
  return { lines, vitals: vitalsOf({ wired: model.wired, ways, held, lines }) };
};

/** The points, by key, that a candidate frees: none of their failures takes the reading any more, nor anything it did not take before. */
const freedBy = (candidate: Candidate, trial: Trial): ReadonlySet<string> => {
  const none: ReadonlySet<string> = new Set();
  const { laid } = trial.input;
  const boat = edited(laid.index.boat, candidate);
  const after = boat === undefined ? undefined : afterwards(boat, trial);
  if (after === undefined) return none;
  const stillPoints = new Set(after.vitals.find(({ of }) => of === trial.vital.of)?.points.map(keyOf));
  const losesOf = new Map(after.lines.map(({ entry }) => [keyOf(entry), entry.loses]));
  const isFreed = (entry: BlackoutEntry): boolean => {
    const taken = new Set(entry.loses.map(needOf));
    return [entry, ...(entry.also ?? [])].every((failure) => {
      const loses = losesOf.get(keyOf(failure));
      return loses !== undefined && !stillPoints.has(keyOf(failure)) && loses.every((loss) => taken.has(needOf(loss)));
    });
  };
  const freed = trial.entries.filter(isFreed).map(keyOf);
  // the last question, as it takes longest: could the boat be saved so
  return freed.length === 0 || editedBoat(laid.index.boat, candidate) === undefined ? none : new Set(freed);
};

const withCures = (trial: Trial): VitalEntry => {
  const { vital } = trial;
  const found: { candidate: Candidate; frees: ReadonlySet<string> }[] = [];
  const freed = new Set<string>();
  for (const candidate of reserveCandidates(trial).slice(0, atMost.tried)) {
    if (found.length >= atMost.shown || freed.size === vital.points.length) break;
    const frees = freedBy(candidate, trial);
    if ([...frees].every((key) => freed.has(key))) continue;
    found.push({ candidate, frees });
    for (const key of frees) freed.add(key);
  }
  return {
    ...vital,
    points: vital.points.map((point) => {
      const cure = found.findIndex(({ frees }) => frees.has(keyOf(point)));
      return cure < 0 ? point : { ...point, cure };
    }),
    cures: found.map(({ candidate }) => asCure(candidate)),
  };
};

const vitalsWithCures = (input: ReserveInput): VitalEntry[] => {
  const { laid, reaches, phase, table } = input;
  const entryOf = new Map(table.blackouts.map((entry) => [keyOf(entry), entry]));
  const context = cureContext({ index: laid.index, reachesIn: () => reaches }, phase, laid.joinsAt(phase));
  const met = laid.index.boat.needs.filter(
    (need) => reaches.network.nodesOf.has(need.at) && waysInto(reaches, need).length > 0,
  );
  return table.vitals.map((vital) => {
    if (vital.points.length === 0) return vital;
    const entries = vital.points.flatMap((point) => entryOf.get(keyOf(point)) ?? []);
    return withCures({ context, input, vital, entries, met });
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
