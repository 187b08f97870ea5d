import { expect, test } from 'vitest';
import { aPilotBoat } from '../../boat/pilot-boat.test-helper.ts';
import { driveDrawsTooMuch } from './drive-draws-too-much.ts';
import { findsAboard } from './steering-case.test-helper.ts';

const found = findsAboard(driveDrawsTooMuch);

test('a pilot in which everything fits passes', () => {
  expect(found(aPilotBoat().boat)).toEqual([]);
});

test('a pump that peaks at 34 A on an output of 20 A is a fault, and an output of 40 A its cure', () => {
  const [finding, ...others] = found(aPilotBoat({ drive: { peakA: 34 } }).boat);
  expect(finding).toMatchObject({ measured: { value: 34, unit: 'A' }, limit: { value: 20, unit: 'A' } });
  expect(finding?.says).toContain('at its peak');
  expect(finding?.cure).toContain('40 A at its peak');
  expect(others).toEqual([]);
});

test('20 A on 20 A is right; a current that runs too high is told apart from the peak', () => {
  expect(found(aPilotBoat({ drive: { peakA: 20 } }).boat)).toEqual([]);
  expect(found(aPilotBoat({ drive: { runA: 13, peakA: 18 } }).boat)[0]?.says).toContain('for long');
  expect(found(aPilotBoat({ drive: { runA: 13, peakA: 34 } }).boat)).toHaveLength(2);
});

test('where none of the usual outputs is enough the cure says so', () => {
  expect(found(aPilotBoat({ drive: { peakA: 60 } }).boat)[0]?.cure).toContain('more than the usual outputs give');
});
