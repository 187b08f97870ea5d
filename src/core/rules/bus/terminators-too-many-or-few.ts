import { strayTerminators } from '../../backbone/stray-terminators.ts';
import type { BoatIndex } from '../../boat/boat-index.ts';
import { splitDotted } from '../../boat/ids.ts';
import { limitOf } from '../../boat/limit-of.ts';
import { busOhm } from '../../facts/dock-tests.ts';
import type { BusEntry } from '../../plan-shape.ts';
import { keptCables } from '../../ways/line-entry.ts';
import type { Observation, Rule } from '../rule.ts';
import { busName, limitPart, unitName } from '../rule-words.ts';

/** One thing that holds a terminator on the trunk itself. `at`: the end it is at; absent, somewhere between. */
interface Holder {
  readonly id: string;
  readonly name: string;
  readonly at?: string;
}

const trunkCables = (index: BoatIndex, bus: BusEntry) => keptCables({ index, serves: [bus.id], kind: 'trunk' });

const unitHolders = (index: BoatIndex, { walk }: BusEntry): Holder[] =>
  walk
    .filter((_, step) => step === 0 || step === walk.length - 1)
    .flatMap(({ place, tees }) =>
      tees
        .filter((tee) => tee !== 'feed' && index.sheetOf.get(splitDotted(tee).kit)?.terminator === true)
        .map((port) => ({ id: port, name: unitName(index, port), at: place })),
    );

/** Cables with a terminator, each at the end it reaches; one that reaches both serves the end where nothing else is. */
const cableHolders = (index: BoatIndex, bus: BusEntry, units: readonly Holder[]): Holder[] => {
  const holders: Holder[] = [];
  const taken = new Set(units.map(({ at }) => at));
  for (const { id, name = id, terminator, from, to } of trunkCables(index, bus)) {
    if (terminator !== true) continue;
    const ends = bus.ends.filter((end) => end === from.place || end === to.place);
    const at = ends.find((end) => !taken.has(end)) ?? ends[0];
    taken.add(at);
    holders.push({ id, name: `the cable ${name}`, ...(at === undefined ? {} : { at }) });
  }
  return holders;
};

/** An end of a trunk that lies in the boat, where every cable that ends there is known to have no terminator. */
const isBare = (index: BoatIndex, bus: BusEntry, end: string): boolean => {
  const cables = trunkCables(index, bus).filter(({ from, to }) => from.place === end || to.place === end);
  const isFitted = index.boat.pins?.layouts?.[bus.id]?.state === 'fitted';
  return isFitted && cables.length > 0 && cables.every(({ terminator }) => terminator === false);
};

const reads = (count: number): string =>
  count === 0
    ? 'With the power off nothing is read between the data wires'
    : `With the power off about ${Math.round(busOhm.terminator.value / count)} ohm is read between the data wires`;

interface End {
  readonly end: string;
  readonly here: readonly Holder[];
  /** two where both ends of the trunk lie at one place */
  readonly wanted: number;
  /** those here, and those to be bought */
  readonly count: number;
}

const endsOf = (index: BoatIndex, bus: BusEntry, holders: readonly Holder[]): End[] =>
  [...new Set(bus.ends)].map((end) => {
    const here = holders.filter(({ at }) => at === end);
    const wanted = bus.ends.filter((other) => other === end).length;
    return { end, here, wanted, count: isBare(index, bus, end) ? here.length : Math.max(here.length, wanted) };
  });

const observed = (index: BoatIndex, bus: BusEntry): Observation[] => {
  const units = unitHolders(index, bus);
  const holders = [...units, ...cableHolders(index, bus, units)];
  const between = holders.filter(({ at }) => at === undefined);
  const ends = endsOf(index, bus, holders);
  const crowded = ends.filter(({ count, wanted }) => count > wanted);
  const bare = ends.filter(({ count, wanted }) => count < wanted);
  if (between.length + crowded.length + bare.length === 0) return [];
  const strays = strayTerminators(index, bus);
  const count = ends.reduce((sum, end) => sum + end.count, between.length + strays.ports.length + strays.cables.length);
  const limit = limitOf(index.boat, 'nmea2000-terminators');
  const placeName = (id: string): string => index.places.get(id)?.name ?? id;
  const names = (list: readonly Holder[]): string => list.map(({ name }) => name).join(' and ');
  const why = [
    ...crowded.map(({ end, here }) => `${names(here)} each hold one at ${placeName(end)}`),
    ...between.map(({ name }) => `${name} holds one between the ends`),
    ...bare.map(({ end }) => `its end at ${placeName(end)} is bare`),
  ];
  const holding = [...crowded.flatMap(({ here }) => here), ...between];
  return [
    {
      about: [bus.id, ...holding.map(({ id }) => id), ...bare.map(({ end }) => end)],
      says: `${busName(index, bus.id)} has ${count} terminator${count === 1 ? '' : 's'}: ${why.join('; ')}. ${reads(count)}; right is 60, from one at each end.`,
      measured: { value: count, unit: limit.unit },
      limit: limitPart(limit),
      cure:
        holding.length === 0
          ? 'Fit the one that is missing.'
          : 'Keep one at each end of the trunk and take out the others.',
    },
  ];
};

/** Counts what the ends, the units there and the cables that stay hold; those on drops have a rule of their own. */
export const terminatorsTooManyOrFew: Rule = {
  id: 'bus/terminators-too-many-or-few',
  level: 'fault',
  title: 'A bus has not just two terminators.',
  sources: ['practice-terminators', 'practice-bus-limits', 'computed-bus-ohm'],
  check: ({ index, plan }) => plan.buses.flatMap((bus) => observed(index, bus)),
};
