import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { nothingFeedsIt } from './nothing-feeds-it.ts';
import { aLoad } from './power-case.test-helper.ts';

test('a unit that comes and is fed by nothing is told of; one that draws nothing or stays is not', () => {
  const found = (mostA: number, fate: 'comes' | 'stays' = 'comes') =>
    findingsOf(nothingFeedsIt, {
      boat: aBoat().unit('display', { fate }).boat,
      plan: { loads: [aLoad({ source: { by: 'nothing' }, mostA })] },
    });
  expect(found(3)).toMatchObject([{ level: 'doubt', about: ['display.dc'], says: expect.stringContaining('3 A') }]);
  expect(found(0)).toEqual([]);
  expect(found(3, 'stays')).toEqual([]);
});

test('a unit on a circuit, a bus, a network cable or another unit is fed', () => {
  const loads = [
    aLoad(),
    aLoad({ source: { by: 'bus', bus: 'nav' } }),
    aLoad({ source: { by: 'network' } }),
    aLoad({ source: { by: 'unit', port: 'gnss.dc' } }),
  ];
  expect(findingsOf(nothingFeedsIt, { plan: { loads } })).toEqual([]);
});
