import { printCount } from '../../../../papers/lists/print-figure.ts';

/** What the step Binder says, in English. */
export const en = {
  heading: 'All papers as one PDF',
  says: 'Drawings, lists, settings, tests, cautions, findings and an index, for the yard, the surveyor and the next owner.',
  paper: 'paper',
  papers: { a4: 'A4', letter: 'US Letter' },
  day: 'day on every sheet',
  make: 'set the binder',
  makeFoundBy: ['print', 'PDF', 'papers', 'documents', 'export'],
  stop: 'stop',
  chapters: (done: number, of: number, chapter: string) => `${done} of ${of} chapters set: ${chapter}`,
  writing: (done: number, of: number) => `sheet ${done} of ${of} written`,
  packing: 'packing the file',
  ready: (sheets: number) => `${printCount(sheets, 'sheet')}. Print at 100 %, then lay a ruler on the cover.`,
  save: 'save the binder',
  failed: 'The binder could not be made. Try again; if it fails again, make it at the terminal.',
  look: 'Look at the sheets',
  sheet: (at: number, of: number) => `sheet ${at} of ${of}`,
  enlarge: (at: number, of: number) => `look at sheet ${at} of ${of} in full`,
  back: 'back to the notes',
  before: 'the sheet before',
  after: 'the next sheet',
  fileName: (boat: string) => `${boat === '' ? 'boat' : boat}-binder.pdf`,
} as const;
