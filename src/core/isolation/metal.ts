import type { BoatIndex } from '../boat/boat-index.ts';
import type { Kit } from '../boat/boat-schema.ts';
import type { Earthing } from '../boat/earthing.ts';
import { isAboard, lastPhase } from '../boat/phase.ts';
import type { LoadEntry } from '../power-shape.ts';
import { type Negatives, negativesOf } from './negatives.ts';

/** A boat as far as its metal goes: what is aboard, of what the hull is, whose negative each unit has. */
export interface Metal {
  readonly index: BoatIndex;
  readonly isMetalHull: boolean;
  readonly negatives: Negatives;
  readonly aboard: readonly Kit[];
  readonly earthingOf: (kit: string) => Earthing;
  /** the conductor that is a unit’s minus; absent where nothing feeds it */
  readonly negativeOf: (kit: string) => string | undefined;
  /** the conductor that is the minus of a bus */
  readonly negativeOfBus: (bus: string) => string | undefined;
  /** the unit’s metal as a conductor; absent where it is of plastic or nobody knows */
  readonly bodyOf: (kit: string) => string | undefined;
  readonly nameOf: (kit: string) => string;
}

const isEngine = (index: BoatIndex, kit: string): boolean => index.sheetOf.get(kit)?.kind === 'engine';

/** Gathers what the bonds of a boat are found from. An engine has the minus of the bank that starts it. */
export const metalOf = (index: BoatIndex, loads: readonly LoadEntry[]): Metal => {
  const { hull, supply, kit } = index.boat;
  const negatives = negativesOf(index);
  const aboard = kit.filter((unit) => isAboard(unit, lastPhase(index.boat)));
  const starting = supply.banks.find((bank) => bank.for !== 'house');
  const fed = loads.flatMap(({ port, from, source }) =>
    from === undefined ? [] : [{ unit: port.split('.')[0] ?? '', from, source }],
  );
  // a unit with leads of its own has the minus of those, not that of the bus it also hangs on
  const sourceOf = new Map(
    [...fed.filter(({ source }) => source.by === 'bus'), ...fed.filter(({ source }) => source.by !== 'bus')].map(
      ({ unit, from }): [string, string] => [unit, from],
    ),
  );
  const busSource = new Map(
    fed.flatMap(({ from, source }): [string, string][] => (source.by === 'bus' ? [[source.bus, from]] : [])),
  );
  const earthingOf = (unit: string): Earthing => index.sheetOf.get(unit)?.earthing ?? {};
  return {
    index,
    isMetalHull: hull.material === 'steel' || hull.material === 'aluminium',
    negatives,
    aboard,
    earthingOf,
    negativeOf: (unit) => {
      const source = sourceOf.get(unit) ?? (isEngine(index, unit) ? starting?.id : undefined);
      return source === undefined ? undefined : negatives.of(source);
    },
    negativeOfBus: (bus) => negatives.of(busSource.get(bus) ?? ''),
    bodyOf: (unit) => (earthingOf(unit).body === 'metal' || isEngine(index, unit) ? `body:${unit}` : undefined),
    nameOf: (unit) => index.kit.get(unit)?.name ?? unit,
  };
};

/** The foot of the mast that a place is on, if it is on one: down the ways in the mast as far as they go. */
export const mastFoot = ({ boat, places }: BoatIndex, place: string): string | undefined => {
  const inMast = boat.ways.filter(({ kind }) => kind === 'mast');
  const heightM = (id: string): number => places.get(id)?.zM ?? 0;
  let at = place;
  for (let steps = 0; steps < inMast.length; steps += 1) {
    const down = inMast
      .flatMap(({ ends: [a, b] }) => (a === at ? [b] : b === at ? [a] : []))
      .find((other) => heightM(other) < heightM(at));
    if (down === undefined) break;
    at = down;
  }
  return at === place ? undefined : at;
};
