/** What the step Fit says, in English. */
export const en = {
  sites: 'What must stand in the right place',
  noSite: 'No antenna, radar or sensor is aboard yet.',
} as const;
