import { type BoatIndex, indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { canonicalBoat } from '../boat/canonical-boat.ts';
import { lastPhase } from '../boat/phase.ts';
import { remember } from '../boat/remember.ts';
import type { StandingJoin } from '../plan-shape.ts';
import { type Refit, refitOf } from '../readings/refit.ts';
import { joinsOf } from './joins-of.ts';
import { type Proposal, proposeJoins, withJoins } from './proposing/propose-joins.ts';

/** One boat with what hangs on her joins alone. */
export interface StandingBoat {
  readonly index: BoatIndex;
  readonly joinsAt: (phase: number) => readonly StandingJoin[];
  readonly refit: Refit;
}

const joinsByPhase = (index: BoatIndex): StandingBoat['joinsAt'] => {
  const known = new Map<number, readonly StandingJoin[]>();
  return (phase) => {
    const joins = known.get(phase) ?? joinsOf(index, phase);
    known.set(phase, joins);
    return joins;
  };
};

/** A boat as her joins stand; kept for the next edit of something else. */
export const standingBoat: (boat: Boat) => StandingBoat = remember({
  most: 6,
  keyOf: (boat: Boat) => JSON.stringify(boat),
  find: (boat) => {
    const index = indexBoat(boat);
    const joinsAt = joinsByPhase(index);
    return { index, joinsAt, refit: refitOf(index, joinsAt) };
  },
});

/** What joins do not hang on: what is needed where, which source counts, what a person has accepted. */
export const withoutNeeds = ({ accepted: _, sources: __, ...own }: Boat): Boat => ({ ...own, needs: [] });

/** A boat in canonical order with the joins that are proposed for her among her own. */
export interface WiredBoat {
  readonly boat: Boat;
  readonly proposal: Proposal | undefined;
}

const proposalFor = remember({
  most: 6,
  keyOf: (boat: Boat) => JSON.stringify(boat),
  find: (boat) => proposeJoins(indexBoat(boat), standingBoat(withoutNeeds(boat)).refit.reachesIn(lastPhase(boat))),
});

const wired = new WeakMap<Boat, WiredBoat>();

/**
 * A boat with the joins proposed for what is needed and does not arrive by those of her file. Everything that looks at joins
 * asks here first, so that all speak of the same ones. Pure; a boat once wired is known again.
 */
export const wiredBoat = (boat: Boat): WiredBoat => {
  const known = wired.get(boat);
  if (known !== undefined) return known;
  const own = canonicalBoat(boat);
  const { accepted: _, ...asked } = own;
  const proposal = proposalFor(asked);
  const found = { boat: proposal === undefined ? own : withJoins(own, proposal.joins), proposal };
  wired.set(boat, found);
  return found;
};
