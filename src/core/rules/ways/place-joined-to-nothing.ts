import type { Place } from '../../boat/boat-schema.ts';
import type { Observation, Rule } from '../rule.ts';

const cutOff = (place: Place, names: readonly string[]): Observation => ({
  about: [place.id],
  says: `No way leads to ${place.name}, so no cable can reach ${names.join(', ')}.`,
  cure: 'Add the way a cable can take to this place, or move the unit.',
});

/** A boat drafted from a recording has everything at one place; what is said there has no length yet. */
const heap = (place: Place, names: readonly string[]): Observation => ({
  about: [place.id],
  level: 'doubt',
  says: `All ${names.length} units stand at one place and no way is entered yet, so lengths, volts and prices here are those of a heap on a table. What the units say to each other is true all the same.`,
  cure: 'Enter the places where the units stand and the ways a cable can take between them.',
});

/** A place no way leads to cannot have a cable: what stands there is cut off. */
export const placeJoinedToNothing: Rule = {
  id: 'ways/place-joined-to-nothing',
  level: 'fault',
  title: 'No way leads to a place where something stands.',
  sources: ['geometry'],
  check: ({ index: { boat } }) => {
    const reached = new Set(boat.ways.flatMap((way) => way.ends));
    return boat.places
      .filter((place) => !reached.has(place.id))
      .flatMap((place) => {
        const names = boat.kit
          .filter(({ place: at, fate }) => at === place.id && fate !== 'goes')
          .map(({ name }) => name);
        if (boat.places.length === 1) return names.length > 1 ? [heap(place, names)] : [];
        return names.length > 0 ? [cutOff(place, names)] : [];
      });
  },
};
