/**
 * What a phone may write into the log of a boat: what was found, done, measured, seen, photographed and noted aboard, and
 * that an entry of its own was a mistake. Any other kind is for the laptop only.
 */
export const phoneKinds: ReadonlySet<string> = new Set([
  'reading',
  'tick',
  'note',
  'photo',
  'measure',
  'seen',
  'aboard',
  'withdrawn',
]);
