import type { Boat } from '../../../src/core/boat/boat-schema.ts';

const papers = (valueM: number, doubtM: number) => ({ valueM, how: 'papers', lessM: doubtM, moreM: doubtM }) as const;
const taped = (valueM: number) => ({ valueM, how: 'taped', lessM: 0.03, moreM: 0.03 }) as const;

/** Her screens all count in metres and knots. */
const screens = [
  'fls',
  'instr-aft-1',
  'instr-aft-2',
  'instr-aft-3',
  'instr-bow',
  'instr-chart',
  'instr-master',
  'instr-wh-1',
  'instr-wh-2',
  'instr-wh-3',
  'mfd-aft',
  'mfd-chart',
  'mfd-wh-1',
  'mfd-wh-2',
  'ship-er',
  'ship-lab',
  'ship-mess',
  'ship-wh',
  'sonar',
].map((unit) => ({ unit, depth: 'm' as const, height: 'm' as const, speed: 'kn' as const, wind: 'm/s' as const }));

/** What her yard measured and her office asked for. The number begins with noughts, as none that is given out does. */
export const bonxieMeasured: Pick<Boat, 'measures' | 'papers'> = {
  measures: {
    airDraftParts: [
      { id: 'deck', name: 'water to the deck at the mainmast', length: taped(2.2) },
      { id: 'mast', name: 'mainmast, deck to truck', length: papers(28.2, 0.3) },
      { id: 'whip', name: 'whip of the first radio', length: papers(0.9, 0.05), unit: 'vhf-1-ant' },
      { id: 'vane', name: 'wind head of the mainmast', length: taped(0.5), unit: 'wind-main' },
    ],
    transducers: [
      { unit: 'depth-el', below: papers(1.75, 0.1) },
      { unit: 'fls', below: papers(2.2, 0.1) },
      { unit: 'sonar-transducer', below: papers(1.75, 0.1) },
    ],
    wavesM: 0.6,
    doubtM: 0.8,
    overheadM: 2,
    screens,
  },
  papers: {
    flag: 'NO',
    goesAbroad: true,
    workBy: 'radio-installer',
    callSign: 'QBON7',
    number: { digits: '000731052', from: 'state', readBackBy: 'the mate' },
    paperwork: [
      { paper: 'beacon-registration', state: 'have', on: '2026-05-04' },
      { paper: 'inland-identification', state: 'not-needed' },
      { paper: 'ship-number', state: 'have', on: '2026-05-04' },
      { paper: 'ship-radio-licence', state: 'asked', on: '2027-01-08', waitDays: 30 },
    ],
  },
};
