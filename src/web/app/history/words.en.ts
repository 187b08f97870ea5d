/** What is said of the last step, and of a boat that is opened again, in English. */
export const en = {
  before: { done: '', undone: 'Taken back: ', redone: 'Made again: ' },
  notDone: (why: string) => `Not done. ${why}`,
  isSoAlready: 'Nothing to change: it is so already.',
  planningAnew: (did: string) => `${did} Planning anew.`,
  withStepsBefore: (steps: number) => `With the ${steps === 1 ? 'step' : `${steps} steps`} before: `,
  takenUp: (changes: number) =>
    changes === 1
      ? 'One change that had not reached the file was taken up.'
      : `${changes} changes that had not reached the file were taken up.`,
  keptUnread:
    'What this browser had kept of her cannot be read: a newer Fairlead kept it, or it is damaged. It is set aside, and this is how she stands in the file.',
  stepsGone: 'The file was changed elsewhere since, so what was done here before cannot be taken back.',
} as const;
