/** What the step Needs says round what is asked for, in English. */
export const en = {
  table: 'table of needs',
  tableOf: 'Table of needs',
  mustBeSeen: 'What must be seen where',
  onlyAsked: 'only what is asked for',
  moreReadings: (count: number) => `${count} more readings`,
  close: 'close',
  reading: 'Reading',
  oneMore: (reading: string) => `one more ${reading}`,
  readingAt: (reading: string, unit: string) => `${reading} at ${unit}`,
  nothingAsked:
    'No reading is asked for yet. Once the boat file says which one must be seen where, this page tells whether it arrives.',
  howTo:
    'Press a cell, or draw across several: first a must, then a wish, then nothing. ✓ arrives, × does not, a ring is a must.',
} as const;
