import { type BoatIndex, indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { boatText } from '../boat/boat-text.ts';
import { remember } from '../boat/remember.ts';
import type { StandingJoin } from '../plan-shape.ts';
import type { Refit } from '../readings/refit.ts';
import { joinedRefit } from './joined-refit.ts';
import { joinsOf } from './joins-of.ts';

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
  keyOf: (boat: Boat) => boatText(boat),
  find: (boat) => {
    const index = indexBoat(boat);
    return { index, joinsAt: joinsByPhase(index), refit: joinedRefit(index) };
  },
});

type NotLaid =
  | 'accepted'
  | 'sources'
  | 'orders'
  | 'underlays'
  | 'photos'
  | 'quote'
  | 'measures'
  | 'papers'
  | 'sea'
  | 'work';

/** What of a boat her joins and lines hang on. */
export type BoatWithoutNeeds = Omit<Boat, NotLaid | 'needs'> & { readonly needs: [] };

/**
 * What neither joins nor lines hang on is left out: what is needed where, which source counts, what a person has accepted or
 * ordered, pictures, the terms of a quote, what is said of the work, and what is set by her measures, her papers and what was
 * tried at sea.
 */
export const withoutNeeds = ({
  accepted: _,
  sources: __,
  orders: ___,
  underlays: ____,
  photos: _____,
  quote: ______,
  measures: _______,
  papers: ________,
  sea: _________,
  work: __________,
  ...own
}: Boat): BoatWithoutNeeds => ({ ...own, needs: [] });
