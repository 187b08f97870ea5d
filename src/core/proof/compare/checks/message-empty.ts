import type { Check } from '../check.ts';
import { messageFindings } from '../message-findings.ts';
import { messageWords } from '../message-words.ts';

/** A planned message that came, but never with a value in it. */
export const messageEmpty: Check = {
  id: 'message-empty',
  title: 'A planned message came without data.',
  level: 'fault',
  sources: ['pgn-database', 'choice-proof'],
  find: (seen) =>
    messageFindings(seen, 'empty', {
      says: ({ message, count }, unit) => `${unit} sent ${messageWords(message)} ${count} times, never with a value.`,
      cure: 'Look at what feeds the unit: its transducer, its antenna, its input; a sounder out of the water has no echo.',
    }),
};
