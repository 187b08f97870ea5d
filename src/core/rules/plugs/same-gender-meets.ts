import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Cable } from '../../boat/boat-schema.ts';
import type { Observation, Rule } from '../rule.ts';

const meetings = (index: BoatIndex, cable: Cable): Observation[] =>
  [cable.from, cable.to].flatMap(({ at, gender }) => {
    const [kit = '', id] = at?.split('.') ?? [];
    const plug = index.sheetOf.get(kit)?.plugs.find((one) => one.id === id);
    if (plug === undefined || gender === 'none' || gender !== plug.gender) return [];
    return [
      {
        about: [cable.id, kit],
        says: `The cable ${cable.name ?? cable.id} ends in a ${gender} plug at ${index.kit.get(kit)?.name ?? kit}, whose own plug is ${plug.gender} too. They cannot be plugged together.`,
        cure: 'Turn the cable round, or order an adapter with the other plug at both ends.',
      },
    ];
  });

/** Two plugs of one gender meet: found on the last evening, with the shop shut. */
export const sameGenderMeets: Rule = {
  id: 'plugs/same-gender-meets',
  level: 'fault',
  title: 'Two plugs of the same gender meet.',
  sources: ['geometry'],
  check: ({ index }) =>
    index.boat.cables.filter(({ fate }) => fate === 'stays').flatMap((cable) => meetings(index, cable)),
};
