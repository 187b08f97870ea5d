import { expect, test } from 'vitest';
import { aPilotBoat } from '../../boat/pilot-boat.test-helper.ts';
import { rudderSensorNotHeard } from './rudder-sensor-not-heard.ts';
import { findsAboard } from './steering-case.test-helper.ts';

const found = findsAboard(rudderSensorNotHeard);

test('a pilot in which everything fits passes', () => {
  expect(found(aPilotBoat().boat)).toEqual([]);
});

test('a sensor of a kind the computer does not hear is a fault', () => {
  const [finding] = found(aPilotBoat({ output: { rudder: { hears: ['frequency'], needed: true } } }).boat);
  expect(finding?.says).toMatch(/of the kind potentiometer, and hears frequency/);
});

test('one that it hears is enough', () => {
  const both = aPilotBoat({ output: { rudder: { hears: ['frequency'], needed: true } } }).sheet(
    'hydraulic-pump-12',
    (sheet) => {
      sheet.rudderSensor = 'frequency';
    },
  );
  expect(found(both.boat)).toEqual([]);
});
