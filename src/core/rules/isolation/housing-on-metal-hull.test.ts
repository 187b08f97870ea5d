import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { aSteelBoat, withMetal } from '../../steel-boat.test-helper.ts';
import { housingOnMetalHull } from './housing-on-metal-hull.ts';
import { isolationFindings } from './isolation-case.test-helper.ts';

const log = { id: 'log', kind: 'speed-sensor', mount: 'metal', earthing: { bodyTo: 'nothing' } } as const;

test('a sleeve, plastic, or a hull that is not of metal passes', () => {
  expect(isolationFindings(housingOnMetalHull, withMetal(aSteelBoat(), { ...log, mount: 'isolated' }))).toEqual([]);
  expect(
    isolationFindings(housingOnMetalHull, withMetal(aSteelBoat(), { ...log, earthing: { body: 'plastic' } })),
  ).toEqual([]);
  expect(isolationFindings(housingOnMetalHull, withMetal(aBoat(), log))).toEqual([]);
});

test('metal in metal is a fault, joined to a wire or not', () => {
  expect(isolationFindings(housingOnMetalHull, withMetal(aSteelBoat(), log))).toMatchObject([
    { level: 'fault', about: ['log'] },
  ]);
});

test('one that is its own minus as well is told of once, by the rule for that', () => {
  expect(
    isolationFindings(housingOnMetalHull, withMetal(aSteelBoat(), { ...log, earthing: { bodyTo: 'negative' } })),
  ).toEqual([]);
});
