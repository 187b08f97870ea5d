import { nmea0183 } from '../../../facts/nmea0183.ts';
import type { Check } from '../check.ts';
import { unitOfPort } from '../planned-sends.ts';
import { atTime, counted, unitName } from '../say.ts';

/** Sentences longer than the 82 characters every listener takes. */
export const sentenceTooLong: Check = {
  id: 'sentence-too-long',
  title: 'Sentences are longer than listeners take.',
  level: 'doubt',
  sources: ['raymond-nmea'],
  find: ({ planned, lines }) =>
    lines
      .filter(({ watched }) => watched.line.counts.overLong > 0)
      .map(({ id, watched }) => ({
        about: [id],
        says: `${counted(watched.line.counts.overLong, 'sentence')} longer than ${nmea0183.sentenceMost.value} characters came; old listeners cut or drop such.`,
        device: id === '' ? 'the 0183 line' : unitName(planned, unitOfPort(id)),
        ...atTime(watched.line.counts.longUs),
        cure: 'Set fewer decimals, or fewer satellites to a sentence, in the talker.',
      })),
};
