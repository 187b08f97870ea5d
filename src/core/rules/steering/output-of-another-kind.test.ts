import { expect, test } from 'vitest';
import { aPilotBoat } from '../../boat/pilot-boat.test-helper.ts';
import { outputOfAnotherKind } from './output-of-another-kind.ts';
import { findsAboard } from './steering-case.test-helper.ts';

const found = findsAboard(outputOfAnotherKind);

test('a pilot in which everything fits passes', () => {
  expect(found(aPilotBoat().boat)).toEqual([]);
});

test('a reversing pump on outputs for valves is a fault, and valves on one for a motor too', () => {
  const [pump] = found(aPilotBoat({ output: { works: ['solenoid-valves'] } }).boat);
  expect(pump?.says).toMatch(/wants an output for a motor turned both ways.*is for two valves/);
  const valves = { type: 'constant-pump' as const };
  expect(found(aPilotBoat({ drive: valves, output: { works: ['reversing-motor'] } }).boat)).toHaveLength(1);
  expect(found(aPilotBoat({ drive: valves, output: { works: ['solenoid-valves'] } }).boat)).toEqual([]);
});
