import { expect, test } from 'vitest';
import { aDevice, aPlace, aProblem, aWay } from './a-problem.test-helper.ts';
import { ladderBoat } from './ladder-boat.test-helper.ts';
import { layoutPrice } from './layout-price.ts';
import type { Problem } from './problem.ts';
import { solveLayout } from './solve-layout.ts';

const lastLayout = (problem: Problem) => {
  const layout = [...solveLayout(problem, { work: 5000 })].at(-1);
  if (layout === undefined) throw new Error('No layout was found.');
  return layout;
};

const bowToStern = aProblem({
  places: [aPlace('bow'), aPlace('helm'), aPlace('stern')],
  ways: [
    aWay({ id: 'fore', a: 'bow', b: 'helm', mm: 4000 }),
    aWay({ id: 'rear', a: 'helm', b: 'stern', mm: 5000, extra: 100 }),
  ],
  devices: [aDevice('compass.n2k', 'bow'), aDevice('display.n2k', 'helm'), aDevice('engine.n2k', 'stern')],
});

test('9 m of trunk, 0.9 m of drops, four tees, two terminators, a feed with 1 m of lead, and work in one way', () => {
  expect(layoutPrice(bowToStern, lastLayout(bowToStern))).toEqual([
    { part: 'trunk', cost: 9000 * 400, lengthM: 9 },
    { part: 'drops', cost: 900 * 500, lengthM: 0.9 },
    { part: 'tees', cost: 4 * 2000 * 1000, count: 4 },
    { part: 'terminators', cost: 2 * 1500 * 1000, count: 2 },
    { part: 'feed', cost: 3000 * 1000 + 1000 * 200, lengthM: 1 },
    { part: 'work', cost: 100 * 1000 },
  ]);
});

test('trunk that lies aboard already is in no part', () => {
  const held = [
    { place: 'bow', tees: [] },
    { place: 'helm', via: 'fore', tees: [] },
  ];
  const problem = { ...bowToStern, held };
  const trunk = layoutPrice(problem, lastLayout(problem)).find(({ part }) => part === 'trunk');
  expect(trunk).toEqual({ part: 'trunk', cost: 5000 * 400, lengthM: 5 });
});

test('the parts add up to the cost of the layout, on thirty boats', () => {
  for (let seed = 0; seed < 30; seed += 1) {
    const problem = ladderBoat(seed, { places: 16, devices: 9 });
    const layout = lastLayout(problem);
    const sum = layoutPrice(problem, layout).reduce((all, { cost }) => all + cost, 0);
    expect([seed, sum]).toEqual([seed, layout.cost]);
  }
});
