import type { Check } from '../check.ts';
import { depthOffsets } from '../depth-offsets.ts';
import { lengthWords } from '../say.ts';

/** An offset that is counted twice: set in the sounder and again further on, or twice as large as it should be. */
export const depthOffsetDoubled: Check = {
  id: 'depth-offset-doubled',
  title: 'A depth offset is counted twice.',
  level: 'fault',
  sources: ['practice-depth-settings', 'choice-proof'],
  find: (seen) =>
    depthOffsets(seen)
      .filter(({ verdict }) => verdict === 'doubled')
      .map(({ unit, device, toldM, dueM, shown }) => ({
        about: [unit],
        says:
          dueM === 0
            ? `${device} tells a depth offset of ${lengthWords(toldM)}, and the offset is to be set elsewhere: it is counted twice.`
            : `${device} tells a depth offset of ${lengthWords(toldM)}, twice the ${lengthWords(dueM)} that is to be set.`,
        device,
        ...shown,
        cure: 'Set the offset in one place only, the one the settings sheet names, and nothing in the others.',
      })),
};
