/** What the log of the boat says in the step Prove, in English. */
export const en = {
  heading: (count: number) => `Log of the work (${count})`,
  about: 'What was found and noted aboard, in the order it was written. Lines are added, never changed.',
  none: 'Nothing stands in it yet. Readings, ticks and notes come here as they are made.',
  note: 'Note',
  noteHint: 'what you saw, and where',
  by: 'your name',
  add: 'write it down',
  takeBack: 'take back',
  takeBackOf: (what: string) => `: ${what}`,
  signed: (at: string, by: string | undefined) => (by === undefined ? at : `${at}, ${by}`),
  reading: (test: string, value: number | undefined, right: boolean | undefined) =>
    `${test}: ${value ?? (right === true ? 'right' : 'not right')}`,
  tick: (of: string, done: boolean) => (done ? `done: ${of}` : `not done after all: ${of}`),
  unread: (count: number) =>
    `${count === 1 ? 'One line' : `${count} lines`} of her log cannot be read: damaged, or written by a newer Fairlead. The log is left as it is; all other lines count.`,
  waiting: (count: number) =>
    `${count} ${count === 1 ? 'line is' : 'lines are'} kept in this browser and go to the boat’s folder as soon as it can be reached.`,
  all: (count: number) => `all ${count}`,
  commandSays: 'write a note in the log',
  foundBy: ['log', 'note', 'remark'],
} as const;
