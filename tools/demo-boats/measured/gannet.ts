import type { Boat } from '../../../src/core/boat/boat-schema.ts';

const taped = (valueM: number) => ({ valueM, how: 'taped', lessM: 0.02, moreM: 0.02 }) as const;

/** Deviation of the helm compass with everything off, as it was before the work, every 30 degrees. Invented. */
const compassOff = [1, 2, 3, 3, 2, 1, -1, -2, -3, -3, -2, 0].map((deviation, at) => ({
  magneticDeg: at * 30,
  compassDeg: (at * 30 - deviation + 360) % 360,
}));

/** What her owner measured, asked for and tried. The number begins with noughts, as none that is given out does. */
export const gannetMeasured: Pick<Boat, 'measures' | 'papers' | 'sea'> = {
  measures: {
    airDraftParts: [
      { id: 'deck', name: 'water to the flybridge deck', length: taped(3.1) },
      { id: 'arch', name: 'deck to the top of the arch', length: taped(2.9) },
      { id: 'light', name: 'post with the anchor light', length: taped(0.7) },
    ],
    transducers: [
      { unit: 'depth-bus', below: taped(0.5) },
      { unit: 'transducer', below: taped(0.55) },
    ],
    wavesM: 0.4,
    screens: ['instr-fly', 'instr-helm', 'mfd-fly', 'mfd-helm', 'sonar'].map((unit) => ({
      unit,
      depth: 'm' as const,
      height: 'm' as const,
      speed: 'kn' as const,
      wind: 'kn' as const,
      temperature: '°C' as const,
    })),
  },
  papers: {
    flag: 'GB',
    goesAbroad: true,
    workBy: 'owner',
    callSign: 'QGAN1',
    number: { digits: '000204117', from: 'state', readBackBy: 'the mate' },
    paperwork: [
      { paper: 'inland-identification', state: 'not-needed' },
      { paper: 'ship-number', state: 'have', on: '2026-11-02' },
      { paper: 'ship-radio-licence', state: 'asked', on: '2027-01-12', waitDays: 20 },
    ],
  },
  sea: {
    swings: [{ id: 'swing-helm-off', unit: 'compass-helm', on: '2026-10-18', electronics: 'off', points: compassOff }],
  },
};
