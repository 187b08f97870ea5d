import type { Figure } from './figure.ts';
import type { SourceKey } from './sources.ts';

/** Loss of one kind of coax. A type name is a size class, not a specification: the part's own data beat all of it. */
export interface CoaxKind {
  readonly name: string;
  readonly outsideMm: number;
  /** of the name and the diameter; losses have their own */
  readonly source: SourceKey;
  /** dB for 100 ft = k1 sqrt(f) + k2 f, f in MHz; used before the points */
  readonly constants?: { readonly k1: number; readonly k2: number; readonly source: SourceKey };
  /** [MHz, dB for 100 m], rising; between two of them log-log, beyond the last with sqrt(f) to twice its frequency */
  readonly points?: { readonly dbPer100M: readonly (readonly [mhz: number, db: number])[]; readonly source: SourceKey };
  /** dB for 100 m near 157 MHz where only the name is known */
  readonly byName: { readonly dbPer100M: number; readonly source: SourceKey };
  readonly unchecked?: { readonly gPerM?: number; readonly velocityFactor?: number; readonly source: SourceKey };
}

/** Kinds of coax by id. */
export const coaxKinds = {
  'rg-58c-u': {
    name: 'RG-58C/U',
    outsideMm: 4.95,
    source: 'practice-coax-size',
    points: {
      source: 'land-mobile-handbook',
      dbPer100M: [
        [50, 10.8],
        [150, 20],
        [450, 35.5],
        [850, 58.2],
      ],
    },
    byName: { dbPer100M: 21, source: 'practice-coax-class' },
    unchecked: { gPerM: 37, velocityFactor: 0.66, source: 'memory-coax' },
  },
  'rg-8x': {
    name: 'RG-8X',
    outsideMm: 6.1,
    source: 'practice-coax-size',
    points: {
      source: 'cable-loss-table',
      dbPer100M: [
        [10, 3.28],
        [30, 6.56],
        [50, 7.55],
        [150, 15.42],
        [450, 28.22],
      ],
    },
    byName: { dbPer100M: 17, source: 'practice-coax-class' },
    unchecked: { gPerM: 50, velocityFactor: 0.8, source: 'memory-coax' },
  },
  'rg-213-u': {
    name: 'RG-213/U',
    outsideMm: 10.3,
    source: 'practice-coax-size',
    points: {
      source: 'land-mobile-handbook',
      dbPer100M: [
        [50, 4.9],
        [150, 8.9],
        [450, 16.3],
        [850, 24.7],
      ],
    },
    byName: { dbPer100M: 9.1, source: 'practice-coax-class' },
    unchecked: { gPerM: 155, velocityFactor: 0.66, source: 'memory-coax' },
  },
  'rg-8-foam': {
    name: 'RG-8 foam',
    outsideMm: 10.3,
    source: 'practice-coax-size',
    points: {
      source: 'land-mobile-handbook',
      dbPer100M: [
        [50, 3.9],
        [150, 7.2],
        [450, 13],
        [850, 17],
      ],
    },
    byName: { dbPer100M: 7.9, source: 'practice-coax-class' },
    unchecked: { velocityFactor: 0.78, source: 'memory-coax' },
  },
  'low-loss-foam-6-mm': {
    name: 'low-loss foam 6 mm',
    outsideMm: 6.1,
    source: 'practice-coax-size',
    constants: { k1: 0.24208, k2: 0.00033, source: 'coax-data-sheets' },
    byName: { dbPer100M: 10.1, source: 'practice-coax-class' },
    unchecked: { velocityFactor: 0.84, source: 'memory-coax' },
  },
  'low-loss-foam-10-mm': {
    name: 'low-loss foam 10 mm',
    outsideMm: 10.3,
    source: 'practice-coax-size',
    constants: { k1: 0.12229, k2: 0.00026, source: 'coax-data-sheets' },
    byName: { dbPer100M: 5.2, source: 'practice-coax-class' },
    unchecked: { gPerM: 100, velocityFactor: 0.85, source: 'memory-coax' },
  },
  'semi-air-10-mm': {
    name: 'semi-air 10 mm',
    outsideMm: 10.3,
    source: 'practice-coax-size',
    points: {
      source: 'cable-loss-table',
      dbPer100M: [
        [10, 1.64],
        [30, 2.62],
        [50, 3.28],
        [150, 5.25],
        [220, 6.23],
        [450, 9.19],
      ],
    },
    byName: { dbPer100M: 5.4, source: 'practice-coax-class' },
  },
  'low-loss-foam-15-mm': {
    name: 'low-loss foam 15 mm',
    outsideMm: 15,
    source: 'practice-coax-size',
    points: {
      source: 'cable-loss-table',
      dbPer100M: [
        [10, 0.66],
        [30, 1.31],
        [50, 1.64],
        [150, 3.28],
        [220, 3.94],
        [450, 5.58],
      ],
    },
    byName: { dbPer100M: 3.4, source: 'practice-coax-class' },
  },
} as const satisfies Record<string, CoaxKind>;
export type CoaxKindId = keyof typeof coaxKinds;

/** The ids of the kinds of coax, as the boat file names them. */
export const coaxKindIds = [
  'rg-58c-u',
  'rg-8x',
  'rg-213-u',
  'rg-8-foam',
  'low-loss-foam-6-mm',
  'low-loss-foam-10-mm',
  'semi-air-10-mm',
  'low-loss-foam-15-mm',
] as const satisfies readonly CoaxKindId[];

/**
 * What a new run is made of, thinnest first, of one thickness the cheaper first; hundredths of a euro for a metre. The thin
 * 5 mm and 6 mm foam kinds are left out: the one loses too much for a boat, the core of the other breaks where it is bent.
 */
export const newCoax = {
  source: 'choice-new-coax',
  kinds: [
    { kind: 'rg-8x', perM: 300 },
    { kind: 'rg-213-u', perM: 450 },
    { kind: 'low-loss-foam-10-mm', perM: 550 },
    { kind: 'low-loss-foam-15-mm', perM: 1200 },
  ],
  /** of every other kind, where a person settles on it */
  otherPerM: 450,
} as const satisfies {
  readonly source: SourceKey;
  readonly kinds: readonly { readonly kind: CoaxKindId; readonly perM: number }[];
  readonly otherPerM: number;
};

/** Loss of one mated pair of plugs, dB: new coax is judged by sound joints, kept coax by weathered ones unless opened and dry. */
export const coaxJoints = {
  sound: { value: 0.05, unit: 'dB to 170 MHz', source: 'practice-joints' },
  weathered: { value: 0.25, unit: 'dB at 150 MHz', source: 'land-mobile-handbook' },
  weatheredAt450: { value: 0.5, unit: 'dB at 450 MHz', source: 'land-mobile-handbook' },
  weatheredAt850: { value: 0.6, unit: 'dB at 850 MHz', source: 'land-mobile-handbook' },
} as const satisfies Record<string, Figure>;

/** Frequencies of a boat's radio and AIS, MHz; voice and AIS are reckoned at the first two. */
export const radioMhz = {
  voice: { value: 156.8, unit: 'MHz, channel 16', source: 'radio-channels' },
  ais: { value: 162, unit: 'MHz', source: 'radio-channels' },
  ais1: { value: 161.975, unit: 'MHz', source: 'radio-channels' },
  ais2: { value: 162.025, unit: 'MHz', source: 'radio-channels' },
  distress: { value: 156.525, unit: 'MHz, channel 70', source: 'radio-channels' },
} as const satisfies Record<string, Figure>;

/** Loss from radio to antenna that passes, dB. */
export const coaxLimits = {
  fortyPercent: { value: 2.2185, unit: 'dB', source: 'osr-3-29' },
  newAim: { value: 2.2, unit: 'dB', source: 'choice-coax-limits' },
  newFaultAbove: { value: 3, unit: 'dB', source: 'choice-coax-limits' },
  keptDoubtAbove: { value: 3, unit: 'dB', source: 'choice-coax-limits' },
  swrGoodBelow: { value: 1.5, unit: 'standing-wave ratio', source: 'practice-swr' },
  swrUsableBelow: { value: 2, unit: 'standing-wave ratio', source: 'practice-swr' },
  swrFaultAbove: { value: 3, unit: 'standing-wave ratio', source: 'practice-swr' },
} as const satisfies Record<string, Figure>;
