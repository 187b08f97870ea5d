import { expect, test } from 'vitest';
import { need, type UnitSketch, wired } from '../../readings/wired.test-helper.ts';
import { sourcesOn } from '../../sources/source-sketch.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { trueWindOfTwoKinds } from './true-wind-of-two-kinds.ts';

const plotter = (...hears: number[]): UnitSketch => ({
  ports: { n2k: { protocol: 'nmea2000', sends: ['wind-true'], hears } },
});
const sensors: UnitSketch = { ports: { n2k: { protocol: 'nmea2000', sends: [130306, 128259, 129026] } } };
/** Two plotters on buses of their own, each with wind, log and position antenna; what each hears of them besides wind. */
const found = (helm: number[], fly: number[]) => {
  const boat = wired({
    units: { fore: sensors, aft: sensors, helm: plotter(130306, ...helm), fly: plotter(130306, ...fly) },
    joins: { nav: ['fore.n2k', 'helm.n2k'], ship: ['aft.n2k', 'fly.n2k'] },
    needs: [need('wind-true', 'helm'), need('wind-true', 'fly')],
  });
  return findingsOf(trueWindOfTwoKinds, { boat, plan: sourcesOn(boat) });
};

test('one screen reckons by the water and the other by the ground: a doubt that names both', () => {
  expect(found([128259], [129026])).toMatchObject([
    {
      level: 'doubt',
      about: ['fly', 'helm'],
      says: expect.stringContaining('through the water for helm, and with speed over ground for fly'),
    },
  ]);
});

test('both by the water, or both by the ground, pass', () => {
  expect(found([128259], [128259])).toEqual([]);
  expect(found([129026], [129026])).toEqual([]);
});
