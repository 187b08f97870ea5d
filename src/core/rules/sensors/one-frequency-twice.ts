import { sensorSiting } from '../../facts/sensor-figures.ts';
import type { LaidInput, Observation, Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';
import { sensorSites } from './sensor-words.ts';

interface Sounding {
  readonly unit: string;
  readonly kHz: number;
}

const soundings = ({ index, plan }: LaidInput): Sounding[] =>
  sensorSites({ plan }).flatMap(({ site }) =>
    (index.sheetOf.get(site.unit)?.sensor?.signals ?? []).flatMap(({ frequenciesKHz = [] }) =>
      frequenciesKHz.map((kHz) => ({ unit: site.unit, kHz })),
    ),
  );

/** Two sounders hear each other’s echoes where they work at one frequency. */
export const oneFrequencyTwice: Rule = {
  id: 'sensors/one-frequency-twice',
  level: 'doubt',
  title: 'Two sounders work at one frequency.',
  sources: ['practice-transducer-place', 'choice-sensor-siting'],
  check: (input) => {
    const all = soundings(input);
    const told = new Set<string>();
    return all.flatMap(({ unit, kHz }, at) =>
      all.slice(at + 1).flatMap((other): Observation[] => {
        const key = `${unit} ${other.unit}`;
        const isOne = Math.abs(other.kHz - kHz) <= sensorSiting.sameFrequency.value * Math.min(other.kHz, kHz);
        if (other.unit === unit || !isOne || told.has(key)) return [];
        told.add(key);
        const names = [unit, other.unit].map((id) => unitName(input.index, id)).join(' and ');
        return [
          {
            about: [unit, other.unit],
            says: `${names} both work at ${kHz} kHz. With both on, each shows the other’s echoes as stripes or false depths.`,
            cure: 'Set one of them to another frequency, or keep one switched off unless the other fails; say on the settings sheet which.',
          },
        ];
      }),
    );
  },
};
