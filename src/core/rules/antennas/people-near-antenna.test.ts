import { expect, test } from 'vitest';
import { anAntenna, antennaFindings } from './antenna-case.test-helper.ts';
import { peopleNearAntenna } from './people-near-antenna.ts';

const found = (near?: { place: string; distanceM: number }[]) =>
  antennaFindings(peopleNearAntenna, {
    sites: [
      anAntenna('radio-antenna', {
        for: ['voice'],
        topM: 3,
        sends: { radio: 'radio.rf', powerW: 25, peopleM: 1.41 },
        ...(near === undefined ? {} : { near }),
      }),
    ],
  });

test('with nobody near it passes', () => {
  expect(found()).toEqual([]);
});

test('somebody within the distance is advice with both distances', () => {
  expect(found([{ place: 'helm', distanceM: 1 }])).toMatchObject([
    { level: 'advice', about: ['gnss', 'helm'], measured: { value: 1 }, limit: { value: 1.41, unit: 'm' } },
  ]);
});
