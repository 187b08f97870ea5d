/** What is said of a boat that is opened again, in English. */
export const en = {
  takenUp: (changes: number) =>
    changes === 1
      ? 'One change that had not reached the file was taken up.'
      : `${changes} changes that had not reached the file were taken up.`,
  stepsGone: 'The file was changed elsewhere since, so what was done here before cannot be taken back.',
} as const;
