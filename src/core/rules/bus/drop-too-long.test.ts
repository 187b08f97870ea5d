import { describe, expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { dropTooLong } from './drop-too-long.ts';

const drops = (boughtM: number) => [{ port: 'display.n2k', lengthM: boughtM, boughtM }];

describe('a drop', () => {
  test('of 6.00 m, the limit, is let pass', () => {
    expect(findingsOf(dropTooLong, { bus: { drops: drops(6) } })).toEqual([]);
  });

  test('of 8.40 m is a fault that names the device, the length and the limit', () => {
    const [finding, ...others] = findingsOf(dropTooLong, { bus: { drops: drops(8.4) } });
    expect(others).toEqual([]);
    expect(finding).toMatchObject({
      id: 'bus/drop-too-long:display.n2k,nav',
      level: 'fault',
      about: ['display.n2k', 'nav'],
      measured: { value: 8.4, unit: 'm' },
      limit: { value: 6, unit: 'm' },
    });
  });

  test('is held against the owner’s own limit where there is one', () => {
    const boat = aBoat().with({ limits: { 'nmea2000-one-drop': { value: 3, reason: 'older cable' } } }).boat;
    const [finding] = findingsOf(dropTooLong, { boat, bus: { drops: drops(4) } });
    expect(finding?.limit).toEqual({ value: 3, unit: 'm', source: 'set by the owner: older cable' });
  });
});
