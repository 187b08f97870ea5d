import { printCount } from '../../../papers/lists/print-figure.ts';

/** What the app says of pulling one thing out, in English. */
export const en = {
  andMore: (count: number) => ` and ${count} more`,
  noReading: 'no reading',
  perhapsVital: (name: string) => `${name} perhaps`,
  singlePoint: (names: string) => `; single point: ${names}`,
  oneFailure: 'What one failure takes',
  lookedAt: (failures: number, harmless: number) =>
    `${failures} looked at, each alone; ${harmless} take nothing off any screen.`,
  others: (count: number) => `The others (${count})`,
  andMoreUnits: (count: number) => ` and ${printCount(count, 'unit')} more`,
  darkWithIt: (units: string) => `Dark with it: ${units}.`,
  nothingGoes: 'Nothing goes off any screen.',
  goOff: (readings: number, screens: number) =>
    `${printCount(readings, 'reading goes', 'readings go')} off ${screens === 1 ? 'one screen' : `${screens} screens`}:`,
  perhaps: (readings: string) => `perhaps ${readings}`,
  noRadio: 'No radio can talk.',
  gone: (name: string) => `${name} is gone from every screen.`,
  perhapsGone: (name: string) => `${name} is gone from every screen, perhaps.`,
  isSinglePoint: (name: string) => `Single point: ${name}.`,
  whatIsLeft: (left: string) => `What is left: ${left}. `,
  atHand: (carry: string) => `At hand (common practice): ${carry}.`,
  orOnly: 'Or only',
  oneTerminator: (backbones: readonly string[]) =>
    `${backbones.join(' and ')}: left with one terminator. A short bus often still works then; what hangs on it is marked perhaps.`,
  pullThis: 'Pull this out and see',
  out: (what: string) => `Out: ${what}`,
  putBack: 'put it back',
  howTo:
    'Press a unit, a cable, a tee or a fuse on the drawing, or a row below: it goes dark with all that hangs on it. Escape puts it back.',
} as const;
