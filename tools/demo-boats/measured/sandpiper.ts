import type { Boat } from '../../../src/core/boat/boat-schema.ts';

const taped = (valueM: number) => ({ valueM, how: 'taped', lessM: 0.02, moreM: 0.02 }) as const;

/** What her owner measured, asked for and tried before the work; the number is on its way. */
export const sandpiperMeasured: Pick<Boat, 'measures' | 'papers' | 'sea'> = {
  measures: {
    airDraftParts: [
      { id: 'freeboard', name: 'freeboard at the mast', length: taped(1.05) },
      { id: 'step', name: 'step on the cabin top', length: taped(0.15) },
      { id: 'mast', name: 'mast, step to truck', length: { valueM: 11.6, how: 'papers', lessM: 0.2, moreM: 0.2 } },
      { id: 'truck', name: 'truck and its plate', length: { valueM: 0.1, how: 'guessed', lessM: 0.05, moreM: 0.05 } },
      { id: 'whip', name: 'whip of the radio', length: taped(1), unit: 'vhf-antenna' },
      { id: 'vane', name: 'wind head', length: taped(0.45), unit: 'wind-head' },
    ],
    transducers: [{ unit: 'depth-element', below: taped(0.4) }],
    screens: [
      { unit: 'log-depth', depth: 'ft', speed: 'kn' },
      { unit: 'plotter', depth: 'm', height: 'm', speed: 'kn', wind: 'kn', temperature: '°C' },
      { unit: 'wind-display', wind: 'kn' },
    ],
    typed: [{ unit: 'log-depth', what: 'depth-offset', figure: -4, in: 'ft', on: '2026-10-03' }],
  },
  papers: {
    flag: 'IE',
    goesAbroad: false,
    workBy: 'owner',
    paperwork: [
      { paper: 'inland-identification', state: 'not-needed' },
      { paper: 'ship-number', state: 'asked', on: '2027-01-20' },
      { paper: 'ship-radio-licence', state: 'asked', on: '2027-01-20', waitDays: 25 },
    ],
  },
  sea: {
    bridges: [
      {
        id: 'road-bridge',
        on: '2026-09-12',
        name: 'road bridge below the town',
        chartedM: 17,
        datum: 'hat',
        datumAboveM: 5.6,
      },
    ],
    logs: [
      {
        id: 'log-before',
        unit: 'log-wheel',
        on: '2026-09-12',
        distanceNm: 1,
        runs: [
          { seconds: 600, indicatedKn: 5.2 },
          { seconds: 900, indicatedKn: 5.1 },
          { seconds: 620, indicatedKn: 5.2 },
        ],
        factorBefore: 1.05,
      },
    ],
  },
};
