/** What the app says of a boat that is open in two tabs, in English. */
export const en = {
  follows: 'Another tab works on this boat; this one follows it.',
  workHere: 'work here',
  workHereSays: 'Work on this boat in this tab',
  notHere: 'Not done: another tab works on this boat. Press “work here” to go on in this one.',
  looksAt: (when: string) => `This is how she was until ${when}. Nothing can be changed here.`,
  notThen: 'Not done: this is an earlier state, to look at. Go back to the boat as she is, or restore this one.',
  back: 'back to the boat as she is',
  restore: 'restore this state',
} as const;
