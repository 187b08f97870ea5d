import { proofLimits } from '../../../facts/proof-limits.ts';
import type { Check } from '../check.ts';
import { sendersOf } from '../find-messages.ts';
import { messageWords } from '../message-words.ts';
import { atTime, figure, interval, unitName } from '../say.ts';

/** A message that stayed away for much longer than its interval, then came again. */
export const messageGap: Check = {
  id: 'message-gap',
  title: 'A message stayed away for a while.',
  level: 'doubt',
  sources: ['choice-proof'],
  find: ({ planned, buses, messages }) =>
    buses.flatMap((bus) =>
      bus.sends.flatMap(({ unit, port, message, everyMs }) => {
        const isRight = messages.some((one) => one.port === port && one.message === message && one.state === 'right');
        if (everyMs === undefined || typeof message === 'string' || !isRight) return [];
        const longest = sendersOf(bus, unit)
          .flatMap((sender) => bus.evidenceOf(sender, message))
          .sort((a, b) => b.longestGapUs - a.longestGapUs)[0];
        const gapMs = (longest?.longestGapUs ?? 0) / 1000;
        // While the whole bus is silent, that is what is told.
        const silentMs = (bus.wire.time?.longestSilenceS ?? 0) * 1000;
        if (gapMs - silentMs <= everyMs * proofLimits.gap.value) return [];
        return [
          {
            about: [port],
            apart: message,
            says: `${unitName(planned, unit)} sent no ${messageWords(message)} for ${figure(gapMs / 1000)} s; it comes every ${interval(everyMs)}, and ten times that is the limit.`,
            device: unitName(planned, unit),
            message,
            ...atTime(longest?.gapFromUs),
            cure: 'Look at its plug and its feed: shake the plug while somebody watches the bus, and see what else was switched at that moment.',
          },
        ];
      }),
    ),
};
