import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { fuseOverWire } from './fuse-over-wire.ts';
import { aFeed } from './power-case.test-helper.ts';

const level = (fuseA: number, nominalV = 12) =>
  findingsOf(fuseOverWire, { plan: { feeds: [aFeed({ fuseA, ampacityA: 20, nominalV })] } })[0]?.level;

test('up to the wire it is right, up to 150 % a doubt, above a fault (33 CFR 183.455(c)(1): 150 % below 50 V)', () => {
  expect([level(20), level(25), level(30), level(35)]).toEqual([undefined, 'doubt', 'doubt', 'fault']);
});

test('from 50 V on nothing above the wire is let pass (33 CFR 183.455(c)(2))', () => {
  expect([level(20, 60), level(25, 60)]).toEqual([undefined, 'fault']);
});

test('a wire that carries less than the load is told of for that', () => {
  expect(findingsOf(fuseOverWire, { plan: { feeds: [aFeed({ fuseA: 40, ampacityA: 20, loadA: 30 })] } })).toEqual([]);
});

test('the finding names both figures', () => {
  const [finding] = findingsOf(fuseOverWire, { plan: { feeds: [aFeed({ fuseA: 40, ampacityA: 20 })] } });
  expect(finding).toMatchObject({ measured: { value: 200 }, says: expect.stringMatching(/40 A.*20 A/) });
});
