/** What the step Prove says, in English. */
export const en = {
  partsAre: 'Parts of this step',
  parts: {
    'prove-tests': 'tests',
    'prove-live': 'live bus',
    'prove-recording': 'recording',
    'prove-trial': 'sea trial',
    'prove-log': 'log',
  },
  goTo: (part: string) => `go to ${part}`,
} as const;
