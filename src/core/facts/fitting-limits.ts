import type { Figure } from './figure.ts';

/** Thresholds of siting and fitting, each a setting. */
export const fittingLimits = {
  'position-antenna-to-transmitter-warn': { value: 3, unit: 'm', source: 'choice-siting' },
  'position-antenna-to-transmitter-advice': { value: 5, unit: 'm', source: 'choice-siting' },
  'ais-to-vhf-same-level': { value: 10, unit: 'm', source: 'imo-sn-227' },
  'ais-to-vhf-stacked': { value: 2, unit: 'm', source: 'imo-sn-227' },
  'card-ignore-below': { value: 3, unit: '°', source: 'choice-siting' },
  'card-adjust-above': { value: 5, unit: '°', source: 'choice-siting' },
  'heading-residual': { value: 3, unit: '°', source: 'choice-siting' },
  'blanking-extra': { value: 5, unit: '°', source: 'choice-siting' },
  'web-least': { value: 25, unit: 'mm', source: 'choice-siting' },
  'web-thicknesses': { value: 3, unit: 'x panel thickness', source: 'choice-siting' },
  'screw-to-edge': { value: 2.5, unit: 'x screw diameter', source: 'choice-siting' },
  'gasket-land': { value: 8, unit: 'mm', source: 'choice-siting' },
  'panel-edge-least': { value: 30, unit: 'mm', source: 'practice-cutting' },
  'panel-uneven-most': { value: 1, unit: 'mm over 300 mm', source: 'practice-cutting' },
  'cut-away-most': { value: 50, unit: '%', source: 'practice-cutting' },
  'plate-overlap': { value: 20, unit: 'mm', source: 'choice-siting' },
} as const satisfies Record<string, Figure>;

/** Longest fields of the AIS static data; sizes in whole metres from the position antenna. */
export const aisFields = {
  source: 'uscg-ais-fields',
  bowMostM: 511,
  sternMostM: 511,
  portMostM: 63,
  starboardMostM: 63,
  draughtStepM: 0.1,
  draughtMostM: 25.5,
  nameChars: 20,
  callSignChars: 7,
} as const;
