import { expect, test } from 'vitest';
import { aPilotBoat } from '../../boat/pilot-boat.test-helper.ts';
import { clutchNotServed } from './clutch-not-served.ts';
import { findsAboard } from './steering-case.test-helper.ts';

const found = findsAboard(clutchNotServed);

test('a pilot in which everything fits passes', () => {
  expect(found(aPilotBoat().boat)).toEqual([]);
});

const clutch = { clutchV: 12, clutchA: 1 };

test('a clutch without an output for it is a fault, and so is a bypass', () => {
  const none = { clutch: { fitted: false } };
  const [finding] = found(aPilotBoat({ drive: clutch, output: none }).boat);
  expect(finding).toMatchObject({ level: 'fault', about: ['pilot.motor', 'pump.motor'] });
  expect(finding?.cure).toContain('with a clutch output of 12 V and 1 A');
  expect(found(aPilotBoat({ drive: { bypass: true }, output: none }).boat)).toHaveLength(1);
  expect(found(aPilotBoat({ output: none }).boat)).toEqual([]);
});

test('a clutch of other volts or of more current than its output is a fault', () => {
  const at = (clutchV: number, clutchA: number) =>
    found(aPilotBoat({ drive: clutch, output: { clutch: { fitted: true, clutchV: [clutchV], clutchA } } }).boat);
  expect(at(12, 1)).toEqual([]);
  expect(at(24, 1)).toMatchObject([{ measured: { value: 12, unit: 'V' }, limit: { value: 24, unit: 'V' } }]);
  expect(at(12, 0.5)).toMatchObject([{ measured: { value: 1, unit: 'A' }, limit: { value: 0.5, unit: 'A' } }]);
});
