import type { Check } from '../check.ts';
import { atTime, counted, deviceSays } from '../say.ts';

/** Claims nobody asked for that are no more than a start and a change of mind. */
const usualClaims = 2;

/** A device that claims its address again and again: it restarts, or is fought. */
export const addressClaimedAgain: Check = {
  id: 'address-claimed-again',
  title: 'A device claims its address again and again.',
  level: 'doubt',
  sources: ['choice-proof'],
  find: ({ planned, buses }) =>
    buses.flatMap((bus) =>
      bus.watched.claims
        .filter(({ count }) => count > bus.watched.asked + usualClaims)
        .flatMap(({ name, address, count, lastUs }) => {
          const sender = bus.senders.find((one) => one.name?.hex === name);
          if (sender === undefined) return [];
          const words = deviceSays(planned, bus, sender);
          return [
            {
              about: [bus.unitOf(sender) ?? bus.id],
              apart: address,
              says: `${words} claimed address ${address} ${counted(count, 'time')}, asked ${counted(bus.watched.asked, 'time')}.`,
              device: words,
              message: 60_928,
              ...atTime(lastUs),
              cure: 'It starts again and again, or another device wants its address: look at its feed for dips, and at the plug of its drop.',
            },
          ];
        }),
    ),
};
