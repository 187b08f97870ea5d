import type { Check } from '../check.ts';
import { depthOffsets } from '../depth-offsets.ts';
import { lengthWords } from '../say.ts';

/** A sounder that does not tell the offset that the sheet of settings has for it. */
export const depthOffsetWrong: Check = {
  id: 'depth-offset-wrong',
  title: 'A sounder tells another depth offset than is to be set.',
  level: 'fault',
  sources: ['practice-depth-settings', 'choice-proof'],
  find: (seen) =>
    depthOffsets(seen)
      .filter(({ verdict }) => verdict === 'missing' || verdict === 'other')
      .map(({ unit, device, toldM, dueM, shown, verdict }) => ({
        about: [unit],
        says:
          verdict === 'missing'
            ? `${device} tells no depth offset; ${lengthWords(dueM)} is to be set.`
            : `${device} tells a depth offset of ${lengthWords(toldM)}; ${lengthWords(dueM)} is to be set.`,
        device,
        ...shown,
        cure: 'Type the offset of the settings sheet into it. Positive is to the waterline, negative to the keel.',
      })),
};
