/** What the lines of a form say, in English. */
export const en = {
  by: 'your name',
  notKnown: 'not known',
  yes: 'yes',
  no: 'no',
  howOf: (label: string) => `${label}: known`,
  hows: { papers: 'from papers', taped: 'by tape', guessed: 'guessed' },
  wrongLength: 'Write a length, for example 0.3 m or 1 ft.',
  wrongNumber: 'Write a number.',
  wrongNumbers: 'Write numbers with a comma between them, for example 12, 24.',
  takeOut: 'take out',
  keep: 'keep',
  screw: (number: number) => `Screw hole ${number}`,
  addScrew: 'add a screw hole',
  screwX: 'Right of the middle, mm',
  screwY: 'Above the middle, mm',
  screwHole: 'Hole, mm',
} as const;
