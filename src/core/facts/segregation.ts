import type { SourceKey } from './sources.ts';

interface Segregation {
  readonly one: string;
  readonly other: string;
  readonly leastM: number;
  /** angle at which they may cross nearer, degrees */
  readonly crossDeg?: number;
  readonly source: SourceKey;
}

/**
 * How far things are kept apart. On a small boat a metre is often impossible: a warning with the distance found and the
 * angle of the crossing, never a refusal.
 */
export const segregation: readonly Segregation[] = [
  { one: 'data cable', other: 'VHF set or its antenna cable', leastM: 1, source: 'practice-segregation' },
  { one: 'data cable', other: 'HF set, tuner or feeder', leastM: 2, source: 'practice-segregation' },
  {
    one: 'data cable',
    other: 'DC above 50 A or inverter lead',
    leastM: 0.15,
    crossDeg: 90,
    source: 'practice-segregation',
  },
  { one: 'data cable', other: 'transmitting coax', leastM: 0.3, crossDeg: 90, source: 'practice-segregation' },
  { one: 'equipment', other: 'radar beam, 20 degrees either side', leastM: 2, source: 'practice-segregation' },
  { one: 'position antenna', other: 'strong transmitter', leastM: 3, source: 'practice-segregation' },
  { one: 'coax', other: 'supply cable', leastM: 0.1, crossDeg: 90, source: 'practice-segregation' },
  { one: 'radar or VHF antenna', other: 'magnetic heading sensor', leastM: 1, source: 'practice-segregation' },
  { one: 'AIS antenna', other: 'radar or VHF antenna', leastM: 1, source: 'practice-segregation' },
  { one: 'fieldbus in plastic tray', other: 'power conduit', leastM: 0.3, source: 'schneider-atv312' },
  { one: 'fieldbus in metal conduit', other: 'power conduit', leastM: 0.08, source: 'schneider-atv312' },
  { one: 'fieldbus', other: 'generator, transformer, motor power line', leastM: 3, source: 'schneider-atv312' },
  { one: 'fieldbus', other: 'fluorescent lamp, radio', leastM: 1, source: 'schneider-atv312' },
];

/** What a way may be entered as lying near, in words, and which row of the distances it is. */
export const disturbers: ReadonlyMap<string, { readonly words: string; readonly other: string }> = new Map([
  ['hf-coax', { words: 'the lead of an HF set', other: 'HF set, tuner or feeder' }],
  ['starter-cable', { words: 'the starter cable', other: 'DC above 50 A or inverter lead' }],
]);
