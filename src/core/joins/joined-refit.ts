import { type BoatIndex, indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { boatText } from '../boat/boat-text.ts';
import { remember } from '../boat/remember.ts';
import type { Reaches } from '../readings/reaches.ts';
import { type Refit, refitOf } from '../readings/refit.ts';
import { joinsOf } from './joins-of.ts';

/** What of a boat says which readings get where: what is aboard when, and how it is joined; not where it stands, nor its name. */
const joinedOnly = (boat: Boat): Boat => ({
  format: boat.format,
  version: boat.version,
  name: '',
  hull: boat.hull,
  places: [],
  ways: [],
  cables: [],
  sheets: boat.sheets,
  kit: boat.kit.map(({ id, sheet, fate, phase, instances, changes }) => ({
    ...{ id, name: '', sheet, fate, place: '' },
    ...(phase === undefined ? {} : { phase }),
    ...(instances === undefined ? {} : { instances }),
    ...(changes === undefined ? {} : { changes }),
  })),
  needs: [],
  buses: boat.buses,
  joins: boat.joins,
  supply: { banks: [], panels: [], dcdc: [] },
  // what a reading rests on is kept with its ways
  ...(boat.proof === undefined ? {} : { proof: boat.proof }),
});

const knownRefit = remember({
  most: 6,
  keyOf: (boat: Boat) => boatText(boat),
  find: (boat) => {
    const index = indexBoat(boat);
    return refitOf(index, (phase) => joinsOf(index, phase));
  },
});

/** Where readings get to, as another boat has it whose units are joined the same. */
export const reachesFor = (index: BoatIndex, reaches: Reaches): Reaches => ({
  ...reaches,
  network: { ...reaches.network, index },
});

/** A boat through her refit with where readings get to as found for one joined the same. */
export const refitWith = (index: BoatIndex, found: Refit['reachesIn']): Refit => {
  const known = new Map<number, Reaches>();
  const reachesIn: Refit['reachesIn'] = (phase) => {
    const own = known.get(phase) ?? reachesFor(index, found(phase));
    known.set(phase, own);
    return own;
  };
  return { index, reachesIn };
};

/**
 * A boat through her refit as her joins stand. Where readings get to is known again for every boat whose units are joined the
 * same, wherever they stand and whatever they are called. Pure.
 */
export const joinedRefit = (index: BoatIndex): Refit => refitWith(index, knownRefit(joinedOnly(index.boat)).reachesIn);
