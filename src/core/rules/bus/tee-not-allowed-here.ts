import type { Rule } from '../rule.ts';

/** A tee in the wet is the commonest fault of a bus, so tees stand only where the boat file allows them. */
export const teeNotAllowedHere: Rule = {
  id: 'bus/tee-not-allowed-here',
  level: 'fault',
  title: 'A tee stands where no tee should be.',
  sources: ['practice-dry-joints'],
  check: ({ index, plan }) =>
    plan.buses.flatMap((bus) =>
      bus.walk
        .filter((step) => step.tees.length > 0)
        .flatMap((step) => {
          const place = index.places.get(step.place);
          if (place === undefined || place.tees) return [];
          const wet =
            place.exposure === 'dry' ? 'no tees are allowed' : `it is ${place.exposure} and no tees are allowed`;
          return [
            {
              about: [bus.id, place.id],
              says: `${step.tees.length === 1 ? 'A tee stands' : `${step.tees.length} tees stand`} at ${place.name}, where ${wet}. Wet joints are the commonest fault of a bus.`,
              cure: 'Put the tee at the nearest dry place and lead a drop from there.',
            },
          ];
        }),
    ),
};
