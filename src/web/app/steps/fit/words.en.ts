/** What the step Fit says, in English. */
export const en = {
  partsAre: 'Parts of this step',
  parts: {
    'fit-openings': 'openings',
    'fit-antennas': 'antennas',
    'fit-compass': 'compass',
    'fit-sensors': 'sensors',
    'fit-papers': 'papers',
    'fit-settings': 'settings',
    'fit-sea': 'at sea',
  },
  goTo: (part: string) => `go to ${part}`,
  sites: (count: number) => `Where each stands (${count})`,
  siteRows: 'What must stand in the right place',
} as const;
