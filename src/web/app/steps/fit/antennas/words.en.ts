/** What the antennas of the step Fit say, in English. */
export const en = {
  heading: 'Antennas, coax and radar',
  none: 'No antenna and no radar is aboard yet.',
  coaxOf: (line: string) => `Coax ${line}`,
  asPicked: 'as the plan picks',
  notRead: 'jacket not read',
  jointsDry: 'every joint opened, dry and bright',
  isOf: (cable: string, kind: string) => `${cable} is ${kind}.`,
  isNotRead: (cable: string) => `What ${cable} is, is not known.`,
  jointsOf: (cable: string, dry: boolean) =>
    `The joints of ${cable} ${dry ? 'are dry and bright' : 'are not looked at'}.`,
  picture: (title: string) => `Picture: ${title}`,
} as const;
