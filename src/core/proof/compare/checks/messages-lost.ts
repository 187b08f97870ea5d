import { proofLimits } from '../../../facts/proof-limits.ts';
import type { Check } from '../check.ts';
import { figure } from '../say.ts';

/** Long messages of which a frame was missing. */
export const messagesLost: Check = {
  id: 'messages-lost',
  title: 'Long messages broke off.',
  level: 'doubt',
  sources: ['pgn-database', 'choice-proof'],
  find: ({ buses }) =>
    buses.flatMap(({ id, wire }) => {
      const { complete, lost } = wire.fastPackets ?? { complete: 0, lost: 0 };
      if (lost === 0) return [];
      const share = lost / (complete + lost);
      return [
        {
          about: [id],
          ...(share > proofLimits.lostShare.value ? { level: 'fault' as const } : {}),
          says: `${lost} of ${complete + lost} long messages broke off (${figure(100 * share)} %).`,
          cure: 'A recorder that cannot keep up loses frames too: record again with nothing else running. Where they still break off, look at the bus as for faults.',
        },
      ];
    }),
};
