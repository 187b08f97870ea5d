/** What the step Fit says, in English. */
export const en = {
  partsAre: 'Parts of this step',
  parts: {
    openings: 'openings',
    antennas: 'antennas',
    compass: 'compass',
    sensors: 'sensors',
    papers: 'papers',
    settings: 'settings',
    sea: 'at sea',
  },
  goTo: (part: string) => `go to ${part}`,
  sites: (count: number) => `Where each stands (${count})`,
  siteRows: 'What must stand in the right place',
} as const;
