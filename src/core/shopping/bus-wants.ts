import { splitDotted } from '../boat/ids.ts';
import { smallPartPrices } from '../facts/buying.ts';
import type { BusEntry } from '../plan-shape.ts';
import { keptCables } from '../ways/line-entry.ts';
import { busPlugOf } from './bus-plug.ts';
import { isHad, type OrderInput } from './line-cutter.ts';
import type { Want } from './want.ts';

const teesOf = (bus: BusEntry): Want[] => {
  const family = busPlugOf(bus.grade);
  const tees = bus.walk.flatMap((step) => step.tees.map((tee) => ({ tee, place: step.place })));
  return tees.map(({ tee, place }) => ({
    id: `${family}-tee`,
    item: `${family} tee`,
    kind: 'bus-part',
    by: 'piece',
    count: 1,
    for: [bus.id, tee.startsWith('spare@') || tee === 'feed' ? place : tee],
    why: 'One tee for each unit on the bus, for its feed and for each spare.',
  }));
};

/** Which ends of a trunk hold a terminator already: a unit on the end’s tees, or a kept cable that reaches it. */
const endsBuiltIn = ({ index }: OrderInput, bus: BusEntry): readonly [boolean, boolean] => {
  const cables = keptCables({ index, serves: [bus.id], kind: 'trunk' }).filter(({ terminator }) => terminator === true);
  const holds = (step: BusEntry['walk'][number] | undefined): boolean =>
    (step?.tees ?? []).some((tee) => index.sheetOf.get(splitDotted(tee).kit)?.terminator === true);
  const reached = (place: string): boolean => cables.some(({ from, to }) => from.place === place || to.place === place);
  const [first, last] = bus.ends;
  return [holds(bus.walk[0]) || reached(first), holds(bus.walk.at(-1)) || reached(last)];
};

/**
 * Two terminators, less what is built in. Cables of a trunk all lie the same way round, male plug toward the first end: the
 * tee there is left with a male plug and takes the female terminator, the tee at the last end takes the male one.
 */
const terminatorsOf = (input: OrderInput, bus: BusEntry): Want[] => {
  const family = busPlugOf(bus.grade);
  const builtIn = endsBuiltIn(input, bus);
  return (['female', 'male'] as const).flatMap((gender, n): Want[] => {
    const [place, has] = [bus.ends[n], builtIn[n]];
    if (place === undefined || has === true) return [];
    const id = `${family}-terminator-${gender}`;
    return [
      {
        id,
        item: `${family} terminator, ${gender}`,
        kind: 'bus-part',
        by: 'piece',
        count: 1,
        each: input.prices.own(id, input.prices.terminator),
        for: [bus.id, place],
        why: `One for the ${n === 0 ? 'first' : 'last'} end of the trunk, with its cables laid the male plug toward the first end.`,
      },
    ];
  });
};

const capsOf = (input: OrderInput, bus: BusEntry): Want[] => {
  const family = busPlugOf(bus.grade);
  const id = `${family}-dust-cap`;
  return bus.walk.flatMap(({ place, tees }) =>
    tees
      .filter((tee) => tee.startsWith('spare@'))
      .map(
        (): Want => ({
          id,
          item: `${family} dust cap for a tee`,
          kind: 'bus-part',
          by: 'piece',
          count: 1,
          each: input.prices.each(id, smallPartPrices.dustCap),
          for: [bus.id, place],
          why: 'A tee without a unit is capped, never closed with a terminator.',
        }),
      ),
  );
};

/** Tees with spares and feed, two terminators of the right gender, caps: for a bus whose trunk is not had yet. */
export const busWants = (input: OrderInput, bus: BusEntry): Want[] => {
  if (isHad(input.index, bus.id)) return [];
  const tees = teesOf(bus).map((want) => ({ ...want, each: input.prices.own(want.id, input.prices.tee) }));
  return [...tees, ...terminatorsOf(input, bus), ...capsOf(input, bus)];
};
