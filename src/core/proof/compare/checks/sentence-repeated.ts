import { proofLimits } from '../../../facts/proof-limits.ts';
import type { Check } from '../check.ts';
import { unitOfPort } from '../planned-sends.ts';
import { atTime, bytesOf, unitName } from '../say.ts';

/** The same sentence twice in a moment on one line. */
export const sentenceRepeated: Check = {
  id: 'sentence-repeated',
  title: 'A sentence comes back on its own line.',
  level: 'fault',
  sources: ['choice-proof'],
  find: ({ planned, lines }) =>
    lines.flatMap((line) =>
      line.watched.echoes
        .filter(({ contents }) => contents.size >= proofLimits.echoes.value)
        .map(({ message, count, firstUs, bytes }) => ({
          about: [line.id],
          apart: message,
          says: `${message} came twice within 50 ms, ${count} times: something sends back what it hears.`,
          device: line.id === '' ? 'the 0183 line' : unitName(planned, unitOfPort(line.id)),
          message,
          ...atTime(firstUs),
          ...bytesOf(message, bytes),
          cure: 'Switch the echo of the multiplexer or the plotter off, or take one of two ways round out.',
        })),
    ),
};
