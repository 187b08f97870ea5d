import type { Rule } from '../rule.ts';

/** A place no way leads to cannot have a cable: what stands there is cut off. */
export const placeJoinedToNothing: Rule = {
  id: 'ways/place-joined-to-nothing',
  level: 'fault',
  title: 'No way leads to a place where something stands.',
  sources: ['geometry'],
  check: ({ index }) => {
    const reached = new Set(index.boat.ways.flatMap((way) => way.ends));
    const alone = index.boat.places.filter((place) => !reached.has(place.id));
    return alone.flatMap((place) => {
      const there = index.boat.kit.filter((unit) => unit.place === place.id && unit.fate !== 'goes');
      // a draft with a single place has no ways yet and is not at fault
      if (there.length === 0 || index.boat.places.length === 1) return [];
      return [
        {
          about: [place.id],
          says: `No way leads to ${place.name}, so no cable can reach ${there.map((unit) => unit.name).join(', ')}.`,
          cure: 'Add the way a cable can take to this place, or move the unit.',
        },
      ];
    });
  },
};
