import type { Figure } from './figure.ts';

/** Limits of antennas and coax that an owner may set otherwise. */
export const antennaLimits = {
  'coax-new-aim': { value: 2.2, unit: 'dB', source: 'choice-coax-limits' },
  'coax-new-most': { value: 3, unit: 'dB', source: 'choice-coax-limits' },
  'coax-kept-most': { value: 3, unit: 'dB', source: 'choice-coax-limits' },
  'coax-joint-sound': { value: 0.05, unit: 'dB', source: 'practice-joints' },
  'coax-joint-weathered': { value: 0.25, unit: 'dB', source: 'land-mobile-handbook' },
  'ais-to-radio-antenna': { value: 10, unit: 'm', source: 'imo-sn-227' },
  'ais-over-radio-antenna': { value: 2, unit: 'm', source: 'imo-sn-227' },
  'radio-antennas-apart': { value: 3, unit: 'm', source: 'practice-antenna-distance' },
  'position-antenna-warn': { value: 3, unit: 'm', source: 'practice-antenna-distance' },
  'position-antenna-advice': { value: 5, unit: 'm', source: 'practice-antenna-distance' },
  'radio-power-density': { value: 2, unit: 'W/m²', source: 'icnirp-1998' },
  'radar-power-density': { value: 10, unit: 'W/m²', source: 'icnirp-1998' },
} as const satisfies Record<string, Figure>;

/** From here up a position antenna wants open sky all round. */
export const skyFrom = { value: 5, unit: '°', source: 'practice-antenna-distance' } as const satisfies Figure;
