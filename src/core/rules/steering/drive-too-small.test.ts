import { expect, test } from 'vitest';
import { aPilotBoat } from '../../boat/pilot-boat.test-helper.ts';
import { driveTooSmall } from './drive-too-small.ts';
import { findsAboard } from './steering-case.test-helper.ts';

const found = findsAboard(driveTooSmall);

test('a pilot in which everything fits passes', () => {
  expect(found(aPilotBoat().boat)).toEqual([]);
});

test('a boat of 4000 kg light is 4800 kg laden, too much for a drive for 4700 kg and right for one of 4800 kg', () => {
  expect(found(aPilotBoat({ drive: { boatKg: 4800 } }).boat)).toEqual([]);
  expect(found(aPilotBoat({ drive: { boatKg: 4700 } }).boat)).toMatchObject([
    { measured: { value: 4800, unit: 'kg' }, limit: { value: 4700, unit: 'kg' } },
  ]);
});
