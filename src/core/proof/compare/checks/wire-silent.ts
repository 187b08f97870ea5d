import { proofLimits } from '../../../facts/proof-limits.ts';
import type { Check } from '../check.ts';
import { figure } from '../say.ts';
import type { SeenBus, SeenLine } from '../seen.ts';

const limitS = ({ sends }: SeenBus | SeenLine): number => {
  const steady = sends.flatMap(({ everyMs }) => everyMs ?? []);
  const shortestMs = steady.length === 0 ? 0 : Math.min(...steady);
  return Math.max(proofLimits.silenceLeast.value, (shortestMs * proofLimits.gap.value) / 1000);
};

/** A wire on which nothing at all was heard, or nothing for a while. */
export const wireSilent: Check = {
  id: 'wire-silent',
  title: 'A bus or a line fell silent.',
  level: 'fault',
  sources: ['choice-proof'],
  find: ({ buses, lines }) =>
    [...buses, ...lines].flatMap((seen) => {
      const { id, wire } = seen;
      const what = wire.kind === 'bus' ? 'The bus' : 'The line';
      if (wire.count === 0)
        return [
          {
            about: [id],
            says: `${what} was silent.`,
            cure: 'See that it is fed and ended, that the adapter is on it, and that it listens at the right speed.',
          },
        ];
      const silentS = wire.time?.longestSilenceS ?? 0;
      if (silentS <= limitS(seen)) return [];
      return [
        {
          about: [id],
          level: 'doubt' as const,
          says: `${what} was silent for ${figure(silentS)} s; ${figure(limitS(seen))} s is the limit.`,
          cure: 'All of it at once is the feed, an end resistor or a short: look at them first. It may also be the recorder that was busy.',
        },
      ];
    }),
};
