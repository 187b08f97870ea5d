import { expect, test } from 'vitest';
import type { PersonAtRadar, Radar } from '../../radar-shape.ts';
import { antennaFindings, aRadar } from './antenna-case.test-helper.ts';
import { peopleInTheBeam } from './people-in-the-beam.ts';

const person: PersonAtRadar = {
  place: 'helm',
  distanceM: 1.5,
  headM: 2.4,
  beamFromM: 2.2,
  beamToM: 2.8,
  inBeam: true,
  soleKnown: true,
};
const found = (own: Partial<PersonAtRadar>, radar: Partial<Radar> = {}) =>
  antennaFindings(peopleInTheBeam, { sites: [aRadar({ people: [{ ...person, ...own }], ...radar })] });

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
