import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** Wind by the compass (MWD) is wind by the bow and heading: a sender that has no heading can only invent it. */
export const windDirectionWithoutHeading: Rule = {
  id: 'readings/wind-direction-without-heading',
  level: 'doubt',
  title: 'Wind direction is sent by a unit that has no heading.',
  sources: ['practice-derived-readings', 'raymond-nmea'],
  check: ({ index, reaches }) =>
    [...reaches.network.nodes.values()]
      .filter(({ port, memberships, carriedTo }) => {
        const isSent = port.sends?.some(({ sentence }) => sentence === 'MWD') === true;
        return isSent && memberships.some(({ talks }) => talks) && !carriedTo.has('wind-true');
      })
      .filter(({ kit }) => !reaches.has(kit, 'heading'))
      .map(({ id, kit }) => ({
        about: [id],
        says: `${unitName(index, kit)} sends wind direction by the compass (MWD), and no heading reaches it to reckon that from. What it sends is empty, or counts from the bow.`,
        cure: `Bring heading to ${unitName(index, kit)}, or switch MWD off and use MWV, which counts from the bow.`,
      })),
};
