/** What the antennas of the step Fit say, in English. */
export const en = {
  heading: 'Antennas, coax and radar',
  none: 'No antenna and no radar is aboard yet.',
  newCoax: 'its new coax',
  asPicked: 'as the plan picks',
  picture: (title: string) => `Picture: ${title}`,
} as const;
