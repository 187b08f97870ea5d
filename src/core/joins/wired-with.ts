import { type BoatIndex, indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { boatText } from '../boat/boat-text.ts';
import { canonicalBoat } from '../boat/canonical-boat.ts';
import { lastPhase } from '../boat/phase.ts';
import { remember } from '../boat/remember.ts';
import type { ProposalEntry } from '../proposal-shape.ts';
import type { Reaches } from '../readings/reaches.ts';
import { standingBoat, withoutNeeds } from './standing-boat.ts';

/** A boat in canonical order with the joins that are proposed for her among her own, and what is said of them. */
export interface WiredBoat {
  readonly boat: Boat;
  readonly proposal: ProposalEntry | undefined;
}

/** Proposes joins for a boat, given where readings get to by those of her file; undefined where nothing is to be proposed. */
export type Proposer = (index: BoatIndex, reaches: Reaches) => WiredBoat | undefined;

/** Wires boats by one proposer; a boat once wired is known again. Pure. */
export const wiredWith = (propose: Proposer): ((boat: Boat) => WiredBoat) => {
  const proposed = remember({
    most: 6,
    keyOf: (boat: Boat) => boatText(boat),
    find: (boat) => propose(indexBoat(boat), standingBoat(withoutNeeds(boat)).refit.reachesIn(lastPhase(boat))),
  });
  const wired = new WeakMap<Boat, WiredBoat>();
  return (boat) => {
    const known = wired.get(boat);
    if (known !== undefined) return known;
    const own = canonicalBoat(boat);
    const { accepted, ...asked } = own;
    const found = proposed(asked);
    const made = {
      boat: found === undefined ? own : { ...own, joins: found.boat.joins },
      proposal: found?.proposal,
    };
    wired.set(boat, made);
    return made;
  };
};

/** Boats as their files wire them, with nothing proposed. */
export const asFiled = wiredWith(() => undefined);
