import type { BoatIndex } from '../boat/boat-index.ts';
import type { Boat, Need } from '../boat/boat-schema.ts';
import { canonicalBoat } from '../boat/canonical-boat.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { lastPhase } from '../boat/phase.ts';
import { needKey } from '../readings/arrivals.ts';
import type { Reaches } from '../readings/reaches.ts';
import { waysInto } from '../readings/ways-in.ts';
import { standingBoat, withoutNeeds } from './standing-boat.ts';

/** The needs of units aboard that do not arrive where readings get to so far. */
export const unmetNeeds = ({ boat }: BoatIndex, reaches: Reaches): Need[] =>
  boat.needs
    .filter((need) => reaches.network.nodesOf.has(need.at) && waysInto(reaches, need).length === 0)
    .sort((a, b) => byCodeUnit(needKey(a), needKey(b)));

/** Whether all that is needed arrives by the joins of the file, so that none has to be proposed. */
export const arrivesAsFiled = (boat: Boat): boolean => {
  const own = canonicalBoat(boat);
  const { index, refit } = standingBoat(withoutNeeds(own));
  return unmetNeeds({ ...index, boat: own }, refit.reachesIn(lastPhase(own))).length === 0;
};
