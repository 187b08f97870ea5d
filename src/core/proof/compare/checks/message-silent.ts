import type { Check } from '../check.ts';
import { messageFindings } from '../message-findings.ts';
import { messageWords } from '../message-words.ts';
import { interval } from '../say.ts';

/** A unit that was heard does not send something it is planned to. */
export const messageSilent: Check = {
  id: 'message-silent',
  title: 'A planned message did not come.',
  level: 'fault',
  sources: ['choice-proof'],
  find: (seen) =>
    messageFindings(seen, 'silent', {
      says: ({ message, plannedMs }, unit) =>
        `${unit} did not send ${messageWords(message)}; planned is every ${interval(plannedMs ?? 0)}.`,
      cure: 'Switch the message on in the unit. Where it cannot send it, take it off its sheet and see what the plan says then.',
    }),
};
