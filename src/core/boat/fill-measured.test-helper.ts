import type { Draft } from 'mutative';
import type { Boat } from './boat-schema.ts';

const guessed = (valueM: number): Boat['ways'][number]['length'] => ({ valueM, how: 'guessed' });

/** What was measured of her, what the law asks for, and what was found at sea. */
export const fillMeasured = (boat: Draft<Boat>): void => {
  boat.waters = 'coast';
  boat.measures = {
    airDraftParts: [
      { id: 'rail', name: 'rail over the water', length: guessed(1.1) },
      { id: 'antenna', name: 'antenna on it', length: { valueM: 0.3, how: 'taped' }, unit: 'gnss' },
    ],
    transducers: [
      { unit: 'radio', below: guessed(0.4) },
      { unit: 'compass', below: { valueM: 0.5, how: 'papers' } },
    ],
    wavesM: 0.4,
    doubtM: 0.6,
    overheadM: 1.5,
    screens: [
      { unit: 'radio', depth: 'fm', height: 'ft', speed: 'km/h', wind: 'm/s', temperature: '°F' },
      { unit: 'display', depth: 'ft' },
    ],
    typed: [
      { unit: 'display', what: 'safety-depth', figure: 8, in: 'ft', on: '2027-05-02' },
      { unit: 'display', what: 'depth-alarm', figure: 2.4, in: 'm' },
    ],
  };
  boat.papers = {
    flag: 'GB',
    goesAbroad: true,
    workBy: 'owner',
    shipName: 'TERN',
    callSign: 'ZZ99',
    number: { digits: '000123456', from: 'state', readBackBy: 'the mate' },
    paperwork: [
      { paper: 'ship-radio-licence', state: 'asked', on: '2027-02-01', waitDays: 30 },
      { paper: 'beacon-registration', state: 'not-needed' },
    ],
  };
  boat.sea = {
    logs: ['log-b', 'log-a'].map((id) => ({
      id,
      unit: 'compass',
      on: '2027-06-01',
      by: 'the mate',
      distanceNm: 1,
      runs: [
        { seconds: 600, indicatedKn: 6 },
        { seconds: 500, indicatedKn: 6.1 },
      ],
      factorBefore: 1.1,
    })),
    winds: [{ id: 'wind-a', unit: 'compass', on: '2027-06-01', tacks: [{ onPortDeg: 35, onStarboardDeg: 25 }] }],
    leads: [{ id: 'lead-a', unit: 'compass', on: '2027-06-01', leadM: 4.6, shownM: 4, offsetM: -0.1 }],
    swings: [
      {
        id: 'swing-a',
        unit: 'compass',
        on: '2027-06-01',
        electronics: 'on',
        points: [
          { magneticDeg: 90, compassDeg: 88 },
          { magneticDeg: 0, compassDeg: 1 },
        ],
      },
    ],
    bridges: [
      { id: 'road', on: '2027-06-01', name: 'road bridge', chartedM: 17, datum: 'hat', datumAboveM: 5.6 },
      { id: 'rail-bridge', on: '2027-06-01', name: 'railway bridge', chartedM: 20 },
    ],
  };
};
