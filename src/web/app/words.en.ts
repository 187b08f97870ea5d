/** What the page says round the boat, in English. */
export const en = {
  faultInProgram: 'This is a fault in the program, not in the boat file.',
  nothingLost: 'Nothing was changed or lost. What the program said:',
  skipToDrawing: 'Skip to the drawing',
  skipToNotes: 'Skip to the notes',
  reading: 'Reading the boat file.',
  lastStep: 'Last step, and file',
  where: 'Where:',
  backToBoat: 'back to the boat',
  unitsOfLength: 'Units of length and wire',
  units: { metres: 'metres', feet: 'feet', both: 'both' },
  lightOfScreen: 'Light of the screen',
  light: { day: 'day', dusk: 'dusk', night: 'night' },
  whatItIs: 'plans the whole change of a boat’s navigation electronics',
  allBoats: 'all boats',
  openFile: 'open a file',
} as const;
