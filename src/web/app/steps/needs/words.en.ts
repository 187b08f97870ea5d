/** What the step Needs says round what is asked for, in English. */
export const en = {
  partsAre: 'Parts of this step',
  parts: { 'needs-asked': 'what must be seen', 'needs-old': 'old kit', 'needs-sources': 'sources' },
  goTo: (part: string) => `go to ${part}`,
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
    'No reading is asked for yet. Put a screen aboard at the step Kit: what such a screen usually shows comes with it. Or open the table of needs under the drawing, and press what must be seen where.',
  howTo:
    'Press a cell, or draw across several: first a must, then a wish, then nothing. ✓ arrives, × does not, a ring is a must.',
} as const;
