import type { Rule } from '../rule.ts';

/** Cable that goes: taken out it makes room and lets the new one be drawn after it; left in, it must be dead and seen to be. */
export const deadCable: Rule = {
  id: 'ways/dead-cable',
  level: 'advice',
  title: 'Cable that goes must come out, or be capped and labelled.',
  sources: ['practice-survey'],
  check: ({ index }) => {
    const goes = index.boat.cables.filter(({ fate }) => fate === 'goes');
    if (goes.length === 0) return [];
    const placeName = (id: string): string => index.places.get(id)?.name ?? id;
    const told = goes.map(
      ({ id, name, from, to }) => `${name ?? id} (${placeName(from.place)} to ${placeName(to.place)})`,
    );
    return [
      {
        about: goes.map(({ id }) => id),
        says: `${goes.length === 1 ? 'One cable goes' : `${goes.length} cables go`}: ${told.join('; ')}. The plan counts on the room ${goes.length === 1 ? 'it leaves' : 'they leave'}.`,
        cure: 'Cut its feed first. Draw it out with a messenger line tied to its end; where it will not come, cap both ends, label them dead, and enter it as staying, so that its room is counted.',
      },
    ];
  },
};
