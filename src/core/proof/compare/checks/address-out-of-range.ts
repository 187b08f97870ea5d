import { proofLimits } from '../../../facts/proof-limits.ts';
import type { Check } from '../check.ts';
import { deviceSays } from '../say.ts';

const cannotClaim = 254;

/** A sender at an address beyond those a device should claim. */
export const addressOutOfRange: Check = {
  id: 'address-out-of-range',
  title: 'A device sends from an address beyond the usual ones.',
  level: 'doubt',
  sources: ['choice-proof'],
  find: ({ planned, buses }) =>
    buses.flatMap((bus) => {
      const high = bus.survey.byAddress.filter(
        ({ address }) => address > proofLimits.lastAddress.value && address < 255,
      );
      return high.map(({ address, frames }) => {
        const lost = bus.watched.claims.find((claim) => claim.address === address)?.name;
        const sender = bus.senders.find((one) => one.addresses.includes(address) || one.name?.hex === lost);
        const words = sender === undefined ? 'A device' : deviceSays(planned, bus, sender);
        const isLost = address === cannotClaim;
        return {
          about: [(sender === undefined ? undefined : bus.unitOf(sender)) ?? bus.id],
          apart: address,
          ...(isLost ? { level: 'fault' as const } : {}),
          says: isLost
            ? `${words} found no address and stays silent (${frames} frames from ${address}).`
            : `${words} sends from address ${address}; up to ${proofLimits.lastAddress.value} is usual.`,
          device: words,
          message: 60_928,
          cure: isLost
            ? 'Another device with a lower NAME holds its address: set another one in it, or in the other.'
            : 'Set a lower address in it where it lets you.',
        };
      });
    }),
};
