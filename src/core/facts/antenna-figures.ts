import type { Figure } from './figure.ts';

/** Isolation of two antennas at one wavelength, dB: the constants of the formulas. */
export const isolationTerms = {
  sideBySide: { value: 22, unit: 'dB', source: 'practice-isolation' },
  stacked: { value: 28, unit: 'dB', source: 'practice-isolation' },
} as const satisfies Record<string, Figure>;

/** Speed of light, so that 1 MHz is 299.792458 m long. */
export const metreMhz = 299.792458;

/** What is taken where no sheet says. */
export const takenFor = {
  gainDbi: { value: 2.15, unit: 'dBi', source: 'choice-antenna-gain' },
  radioW: { value: 25, unit: 'W', source: 'choice-antenna-gain' },
  mastM: { value: 0.15, unit: 'm', source: 'choice-widths' },
  whipM: { value: 0.025, unit: 'm', source: 'choice-widths' },
  scannerM: { value: 0.6, unit: 'm', source: 'choice-widths' },
  leastShadow: { value: 0.5, unit: '°', source: 'choice-widths' },
} as const satisfies Record<string, Figure>;

/** Where a head is. */
export const peopleFigures = {
  headOverSole: { value: 1.75, unit: 'm', source: 'choice-people' },
  dashOverSole: { value: 0.85, unit: 'm', source: 'choice-people' },
} as const satisfies Record<string, Figure>;

/** The other end of a range, by height of its antenna over the water. */
export const otherStations = [
  { to: 'small-boat', height: { value: 2, unit: 'm', source: 'choice-stations' } },
  { to: 'yacht', height: { value: 15, unit: 'm', source: 'choice-stations' } },
  { to: 'ship', height: { value: 20, unit: 'm', source: 'choice-stations' } },
] as const satisfies readonly { readonly to: string; readonly height: Figure }[];

/** Room round a scanner, and what spoils its picture. */
export const scannerFigures = {
  turningMore: { value: 0.2, unit: 'm', source: 'practice-scanner-neighbours' },
  planeWithin: { value: 20, unit: '°', source: 'practice-scanner-neighbours' },
  twoUp: { value: 0.5, unit: 'm', source: 'practice-scanner-neighbours' },
  twoAcross: { value: 2, unit: 'm', source: 'practice-scanner-neighbours' },
  blankMore: { value: 5, unit: '°', source: 'practice-blanking' },
  abaftBeam: { value: 112.5, unit: '°', source: 'imo-sn1-271' },
  oneSector: { value: 5, unit: '°', source: 'imo-sn1-271' },
  allSectors: { value: 20, unit: '°', source: 'imo-sn1-271' },
  sectorsApart: { value: 3, unit: '°', source: 'imo-sn1-271' },
  bowSeen: { value: 500, unit: 'm', source: 'imo-sn1-271' },
  bowLengths: { value: 2, unit: 'lengths', source: 'imo-sn1-271' },
  hotCopper: { value: 1.22, unit: 'x resistance at 20 °C', source: 'maker-hot-copper' },
} as const satisfies Record<string, Figure>;

/** Distance beyond which nothing is looked at: as a unit that shadows or stands in the sky, and as an antenna in the plane of a scanner. */
export const neighboursWithin = { value: 10, unit: 'm', source: 'choice-neighbours' } as const satisfies Figure;
export const inPlaneWithin = { value: 5, unit: 'm', source: 'choice-neighbours' } as const satisfies Figure;
/** An antenna in the plane of a scanner is graver nearer than this. */
export const inPlaneWarn = { value: 2, unit: 'm', source: 'practice-scanner-neighbours' } as const satisfies Figure;
/** Something over the horizon of a position antenna that is as wide takes satellites from it. */
export const wideInSky = { value: 30, unit: '°', source: 'choice-neighbours' } as const satisfies Figure;
