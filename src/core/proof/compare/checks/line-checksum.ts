import type { Check } from '../check.ts';
import { unitOfPort } from '../planned-sends.ts';
import { atTime, unitName } from '../say.ts';

/** Sentences with a wrong checksum. */
export const lineChecksum: Check = {
  id: 'line-checksum',
  title: 'Sentences came with a wrong checksum.',
  level: 'fault',
  sources: ['raymond-nmea'],
  find: ({ planned, lines }) =>
    lines
      .filter(({ watched }) => watched.line.counts.checksumWrong > 0)
      .map(({ id, watched }) => {
        const { checksumWrong, sentences, wrongUs } = watched.line.counts;
        return {
          about: [id],
          says: `${checksumWrong} of ${sentences} sentences came with a wrong checksum; listeners drop them.`,
          device: id === '' ? 'the 0183 line' : unitName(planned, unitOfPort(id)),
          ...atTime(wrongUs),
          cure: 'Look for two talkers on one pair, a line that is full, the wrong speed at one end, a bad earth.',
        };
      }),
};
