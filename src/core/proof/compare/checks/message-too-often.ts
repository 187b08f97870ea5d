import type { Check } from '../check.ts';
import { messageFindings } from '../message-findings.ts';
import { messageWords } from '../message-words.ts';
import { interval } from '../say.ts';

/** A planned message that comes more than twice as often as planned. */
export const messageTooOften: Check = {
  id: 'message-too-often',
  title: 'A message comes more often than planned.',
  level: 'advice',
  sources: ['choice-proof'],
  find: (seen) =>
    messageFindings(seen, 'too-often', {
      says: ({ message, plannedMs, seenMs }, unit) =>
        `${unit} sends ${messageWords(message)} every ${interval(seenMs ?? 0)}; planned is every ${interval(plannedMs ?? 0)}, half that is the limit.`,
      cure: 'Set the rate in the unit, or put the rate heard into the boat file, so that the load of the bus is planned with it.',
    }),
};
