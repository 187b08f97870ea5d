import type { Figure } from './figure.ts';

/** How a sensor sits in a hull so that it works. */
export const sensorSiting = {
  /** ahead of the propeller, as a share of the waterline */
  aheadOfPropeller: { value: 0.1, unit: 'x waterline', source: 'practice-transducer-place' },
  /** sideways or lengthways from the keel */
  fromKeel: { value: 0.15, unit: 'm', source: 'practice-transducer-place' },
  /** a paddle wheel wants water the keel has not parted yet */
  wheelAheadOfKeel: { value: 0.3, unit: 'm', source: 'practice-transducer-place' },
  /** to pull the insert */
  headroom: { value: 100, unit: 'mm', source: 'practice-transducer-place' },
  /** from the centreline, as a share of the beam */
  offCentreline: { value: 0.15, unit: 'x beam', source: 'choice-sensor-siting' },
  /** two frequencies that are no farther apart are one */
  sameFrequency: { value: 0.02, unit: 'x frequency', source: 'choice-sensor-siting' },
  /** what stands so near a wind head and higher throws its eddies on it */
  windClear: { value: 0.5, unit: 'm', source: 'choice-sensor-siting' },
} as const satisfies Record<string, Figure>;

/** What an owner may set otherwise, a key of `limits` in a boat file. */
export const sensorOwnLimits = {
  'transducer-tilt': { value: 10, unit: '°', source: 'choice-siting' },
} as const satisfies Record<string, Figure>;
