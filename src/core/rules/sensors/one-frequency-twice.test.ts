import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { oneFrequencyTwice } from './one-frequency-twice.ts';

const found = (oneKHz: number, otherKHz: number) => {
  const { boat } = aBoat().add({
    sheets: [oneKHz, otherKHz].map((kHz, at) => ({
      id: `element-${at}`,
      name: 'Element',
      kind: 'transducer',
      source: 'typical' as const,
      plugs: [],
      ports: [{ id: 'echo', protocol: 'wifi' as const, role: 'talk' as const }],
      sensor: { signals: [{ port: 'echo', frequenciesKHz: [kHz] }] },
    })),
    kit: [0, 1].map((at) => ({
      id: `e-${at}`,
      name: `e ${at}`,
      sheet: `element-${at}`,
      fate: 'stays' as const,
      place: 'helm',
    })),
  });
  const site = (unit: string) => ({
    unit,
    is: 'depth' as const,
    place: 'helm',
    aboveWaterM: -0.5,
    sensor: { checks: [], inputs: [] },
  });
  return findingsOf(oneFrequencyTwice, { boat, plan: { sites: [site('e-0'), site('e-1')] } });
};

test('50 and 200 kHz live side by side', () => {
  expect(found(50, 200)).toEqual([]);
});

test('200 and 202 kHz are one frequency: a doubt about both', () => {
  expect(found(200, 202)).toMatchObject([{ level: 'doubt', about: ['e-0', 'e-1'] }]);
});
