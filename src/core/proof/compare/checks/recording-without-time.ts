import type { Check } from '../check.ts';

/** A recording that tells no time. */
export const recordingWithoutTime: Check = {
  id: 'recording-without-time',
  title: 'The recording tells no time.',
  level: 'advice',
  sources: ['choice-proof'],
  find: ({ buses, lines }) =>
    [...buses, ...lines]
      .filter(({ wire }) => wire.count > 0 && wire.time === undefined)
      .map(({ id }) => ({
        about: [id],
        says: 'The recording tells no time: rates, load, gaps and echoes are not judged.',
        cure: 'Record again with times, for at least two minutes.',
      })),
};
