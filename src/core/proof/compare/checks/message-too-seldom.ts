import type { Check } from '../check.ts';
import { messageFindings } from '../message-findings.ts';
import { messageWords } from '../message-words.ts';
import { interval } from '../say.ts';

/** A planned message that comes less than half as often as planned. */
export const messageTooSeldom: Check = {
  id: 'message-too-seldom',
  title: 'A message comes less often than planned.',
  level: 'doubt',
  sources: ['choice-proof'],
  find: (seen) =>
    messageFindings(seen, 'too-seldom', {
      says: ({ message, plannedMs, seenMs }, unit) =>
        `${unit} sends ${messageWords(message)} every ${interval(seenMs ?? 0)}; planned is every ${interval(plannedMs ?? 0)}, twice that is the limit.`,
      cure: 'Set the rate in the unit. Where it cannot go faster, put the rate heard into the boat file and see which screen wants more.',
    }),
};
