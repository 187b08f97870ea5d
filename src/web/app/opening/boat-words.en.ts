import { printCount } from '../../../papers/lists/print-figure.ts';

/** What is said when a boat cannot be brought, and of a boat that is open; in English. */
export const en = {
  noCopy: 'This file is no boat that could be copied.',
  chooseAnother: 'Choose another.',
  fileGone: 'A file opened by hand is not kept when the page is loaded anew.',
  keepZip: 'Keep the zip, and open it again when there is room.',
  openAgain: 'Open it again, or drop it on the page.',
  volts: (nominalV: number) => `${nominalV} V`,
  and: ' and ',
  hull: (lengthM: number, kind: string) => `${lengthM} m ${kind}`,
  units: (count: number) => printCount(count, 'unit'),
} as const;
