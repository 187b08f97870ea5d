import type { Boat } from '../boat-schema.ts';
import { nameInBoat } from './name-in-boat.ts';

/** A way by the names of its ends: `from electrical locker to helm dash`; its id where the boat has no such way. */
export const wayInWords = ({ places, ways }: Pick<Boat, 'places' | 'ways'>, way: string): string => {
  const ends = ways.find(({ id }) => id === way)?.ends.map((end) => nameInBoat(places, end));
  return ends === undefined ? `“${way}”` : `from ${ends.join(' to ')}`;
};
