import type { Check } from '../check.ts';
import { counted } from '../say.ts';

/** Lines or records that could not be read. */
export const recordingDamaged: Check = {
  id: 'recording-damaged',
  title: 'Part of the recording could not be read.',
  level: 'advice',
  sources: ['choice-proof'],
  find: ({ buses, lines }) =>
    [...buses, ...lines]
      .filter(({ wire }) => wire.broken > 0 || wire.cutShort)
      .map(({ id, wire }) => ({
        about: [id],
        says: `${counted(wire.broken, 'line')} could not be read${wire.cutShort ? ', and the recording ends in the middle of one' : ''}.`,
        cure: 'Nearly all of them unread is the wrong speed or the wrong form; a few are a recorder that was cut off.',
      })),
};
