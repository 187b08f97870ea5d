import { expect, test } from 'vitest';
import type { PersonAtRadar, Radar } from '../../radar-shape.ts';
import { antennaFindings, aRadar, personAtRadar } from './antenna-case.test-helper.ts';
import { peopleInTheBeam } from './people-in-the-beam.ts';

const found = (own: Partial<PersonAtRadar>, radar: Partial<Radar> = {}) =>
  antennaFindings(peopleInTheBeam, { sites: [aRadar({ people: [personAtRadar(own)], ...radar })] });

test('a head under the beam passes', () => {
  expect(found({ inBeam: false })).toEqual([]);
});

test('within the distance of the plate it is a fault, beyond it advice', () => {
  expect(found({})).toMatchObject([{ level: 'fault', about: ['display', 'helm'], limit: { value: 2 } }]);
  expect(found({ distanceM: 3 })).toMatchObject([{ level: 'advice' }]);
});

test('where sole or distance are only taken it is a doubt', () => {
  expect(found({ soleKnown: false })).toMatchObject([{ level: 'doubt' }]);
  expect(found({}, { peopleBy: 'typical' })).toMatchObject([{ level: 'doubt' }]);
});
