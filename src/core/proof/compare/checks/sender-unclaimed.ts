import type { Check } from '../check.ts';
import { deviceSays } from '../say.ts';

/** A sender whose NAME the recording does not hold. */
export const senderUnclaimed: Check = {
  id: 'sender-unclaimed',
  title: 'A device was heard, but not its NAME.',
  level: 'advice',
  sources: ['pgn-database'],
  find: ({ planned, buses }) =>
    buses.flatMap((bus) => {
      const strangers = new Set(bus.matches.strangers.map(({ sender }) => sender));
      return bus.senders.flatMap((sender, at) => {
        if (sender.name !== undefined || (bus.unitOf(sender) === undefined && !strangers.has(at))) return [];
        const words = deviceSays(planned, bus, sender);
        return [
          {
            about: [bus.unitOf(sender) ?? bus.id],
            apart: sender.address ?? sender.addresses.at(-1) ?? at,
            says: `${words} showed no NAME: it is known by its address only, which may change with the next start.`,
            device: words,
            cure: 'Record from the moment the bus is switched on, or let the recorder ask everybody for their claims (60928).',
          },
        ];
      });
    }),
};
