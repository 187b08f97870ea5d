import type { Boat } from './boat-schema.ts';

type LongParts = Pick<Boat, 'places' | 'ways' | 'cables' | 'sheets' | 'kit' | 'needs' | 'buses' | 'joins' | 'supply'>;

/** The parts that every boat file has, with nothing in them, in the order in which they are written. */
export const emptyParts = (): LongParts => ({
  places: [],
  ways: [],
  cables: [],
  sheets: [],
  kit: [],
  needs: [],
  buses: [],
  joins: [],
  supply: { banks: [], panels: [], dcdc: [] },
});
