import { byStrengthOfName } from '../../decode/name-field.ts';
import type { Check } from '../check.ts';
import type { Claim } from '../claim-book.ts';
import { atTime, deviceWords, listed } from '../say.ts';
import type { SeenBus } from '../seen.ts';

const byAddress = (claims: readonly Claim[]): ReadonlyMap<number, readonly Claim[]> => {
  const found = new Map<number, Claim[]>();
  for (const claim of claims) found.set(claim.address, [...(found.get(claim.address) ?? []), claim]);
  return found;
};

const senderOf = (bus: SeenBus, { name }: Claim) => bus.senders.find((sender) => sender.name?.hex === name);

/** One address claimed under several NAMEs in one recording. */
export const addressFought: Check = {
  id: 'address-fought',
  title: 'Several devices claimed one address.',
  level: 'fault',
  sources: ['pgn-database'],
  find: ({ planned, buses }) =>
    buses.flatMap((bus) =>
      [...byAddress(bus.watched.claims.filter(({ address }) => address < 254))].flatMap(([address, claims]) => {
        if (claims.length < 2) return [];
        const strongest = [...claims].sort((a, b) => byStrengthOfName(a.name, b.name));
        const senders = strongest.flatMap((claim) => senderOf(bus, claim) ?? []);
        const words = senders.map((sender) => deviceWords(planned, bus, sender));
        return [
          {
            about: [bus.id, ...senders.flatMap((sender) => bus.unitOf(sender) ?? [])],
            apart: address,
            says: `${claims.length} devices claimed address ${address}: ${listed(words)}. The lowest NAME keeps it; the others move, or fall silent.`,
            ...(words[0] === undefined ? {} : { device: words[0] }),
            message: 60_928,
            ...atTime(strongest[1]?.firstUs),
            cure: 'Harmless once, while the bus starts. Where it comes again and again, switch the devices on one after the other, and set a fixed address in the one that cannot move.',
          },
        ];
      }),
    ),
};
