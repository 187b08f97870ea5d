/** What the step Prove says, in English. */
export const en = {
  partsAre: 'Parts of this step',
  parts: {
    'prove-log': 'log',
  },
  goTo: (part: string) => `go to ${part}`,
} as const;
