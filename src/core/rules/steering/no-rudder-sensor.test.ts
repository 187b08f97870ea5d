import { expect, test } from 'vitest';
import { aPilotBoat } from '../../boat/pilot-boat.test-helper.ts';
import { noRudderSensor } from './no-rudder-sensor.ts';
import { findsAboard } from './steering-case.test-helper.ts';

const found = findsAboard(noRudderSensor);

test('a pilot in which everything fits passes', () => {
  expect(found(aPilotBoat().boat)).toEqual([]);
});

test('a pilot that asks for one and has none is a fault, one that asks for none is not', () => {
  expect(found(aPilotBoat({ rudder: false }).boat)).toMatchObject([
    { level: 'fault', about: ['pilot.motor', 'pump.motor'] },
  ]);
  const modest = {
    rudder: false,
    drive: { needsRudderSensor: false },
    output: { rudder: { hears: [], needed: false } },
  };
  expect(found(aPilotBoat(modest).boat)).toEqual([]);
});
