/** What the antennas of the step Fit say, in English. */
export const en = {
  heading: 'Antennas, coax and radar',
  none: 'No antenna and no radar is aboard yet. Add them at the step Kit: then their range and the watts that arrive stand here.',
  more: 'range, coax, who keeps off',
  newCoax: 'its new coax',
  asPicked: 'as the plan picks',
  picture: (title: string) => `Picture: ${title}`,
} as const;
