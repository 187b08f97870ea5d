import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { anAntenna, antennaFindings } from './antenna-case.test-helper.ts';
import { noOpenSky } from './no-open-sky.ts';

const steel = aBoat().change((boat) => {
  boat.hull.material = 'steel';
}).boat;
const at = (inOpen: boolean, wideDeg = 5) =>
  anAntenna('position-antenna', {
    for: ['position'],
    topM: 2,
    inOpen,
    sky: [{ by: 'mast-base', kind: 'mast', bearingDeg: 90, wideDeg, upDeg: 60 }],
  });

test('in the open, with a mast a little way off, it passes', () => {
  expect(antennaFindings(noOpenSky, { sites: [at(true)] })).toEqual([]);
});

test('under a deck it is advice, in a boat of steel a doubt', () => {
  expect(antennaFindings(noOpenSky, { sites: [at(false)] })).toMatchObject([{ level: 'advice', about: ['gnss'] }]);
  expect(antennaFindings(noOpenSky, { sites: [at(false)] }, steel)).toMatchObject([{ level: 'doubt' }]);
});

test('something wide before it is advice', () => {
  expect(antennaFindings(noOpenSky, { sites: [at(true, 40)] })).toMatchObject([
    { about: ['gnss', 'mast-base'], measured: { value: 40 }, limit: { value: 30 } },
  ]);
});
