import { expect, test } from 'vitest';
import { aPilotBoat } from '../../boat/pilot-boat.test-helper.ts';
import { motorVoltsDiffer } from './motor-volts-differ.ts';
import { findsAboard } from './steering-case.test-helper.ts';

const found = findsAboard(motorVoltsDiffer);

test('a pilot in which everything fits passes', () => {
  expect(found(aPilotBoat().boat)).toEqual([]);
});

test('a pump for 24 V on a 12 V computer is a fault that names the output it wants', () => {
  const [finding] = found(aPilotBoat({ drive: { motorV: 24 } }).boat);
  expect(finding).toMatchObject({
    level: 'fault',
    about: ['pilot.motor', 'pump.motor'],
    measured: { value: 24, unit: 'V' },
    limit: { value: 12, unit: 'V' },
  });
  expect(finding?.cure).toMatch(/a motor turned both ways, 24 V, 20 A at its peak/);
});

test('a computer that can be set to either is right', () => {
  expect(found(aPilotBoat({ drive: { motorV: 24 }, output: { motorV: [12, 24] } }).boat)).toEqual([]);
});
