import type { BoatIndex } from '../boat/boat-index.ts';
import type { Place } from '../boat/boat-schema.ts';
import type { LineEntry } from '../plan-shape.ts';

const wetness: Readonly<Record<Place['exposure'], number>> = {
  dry: 0,
  damp: 0,
  engine: 0,
  bilge: 0,
  spray: 1,
  weather: 1,
};

const isWet = (place: Place | undefined): boolean => place !== undefined && wetness[place.exposure] > 0;

/**
 * The places where a line needs a drip loop, so that water running along it drops off before it gets in: at an end that
 * stands in spray or weather, and inside wherever it comes in from there. In the order of its places.
 */
export const dripLoops = (index: BoatIndex, { places }: Pick<LineEntry, 'places'>): string[] => {
  const wet = places.map((id) => isWet(index.places.get(id)));
  return places.filter((_, at) => {
    const isEnd = at === 0 || at === places.length - 1;
    const comesIn = wet[at] === false && (wet[at - 1] === true || wet[at + 1] === true);
    return comesIn || (isEnd && wet[at] === true);
  });
};
