import loadHighs from 'highs';
import { expect, test } from 'vitest';
import { ladderBoat } from './ladder-boat.test-helper.ts';
import { layoutLp } from './layout-lp.test-helper.ts';
import type { Layout, Problem } from './problem.ts';
import { solveLayout } from './solve-layout.ts';

/** A boat on which neither currents nor volts bind, for the linear programme knows nothing of them; drops bind on some. */
const strongBoat = (seed: number): Problem => {
  const boat = ladderBoat(seed, { places: 10, devices: 6 });
  const { lostMv: _, ...feed } = boat.feed;
  const grades = boat.grades.slice(1, 2).map((grade) => ({ ...grade, maxMa: 1_000_000, microOhmPerM: 1 }));
  const limits = { ...boat.limits, dropsMm: seed % 2 === 0 ? 78_000 : 9000 };
  return { ...boat, grades, limits, feed };
};

test('a general solver of integer programmes finds the same least cost on ten boats', async () => {
  const highs = await loadHighs();
  let holding = 0;
  for (let seed = 0; seed < 10; seed += 1) {
    const problem = strongBoat(seed);
    const grade = problem.grades[0];
    if (grade === undefined) throw new Error('The boat has no grade of cable.');
    const lp = layoutLp({ problem, grade, model: seed < 7 ? 'plain' : 'strong' });
    const second = highs.solve(lp, { mip_rel_gap: 0, output_flag: false });
    const first: Layout | undefined = [...solveLayout(problem, { work: 200_000 })].at(-1);
    if (second.Status !== 'Optimal') {
      expect([second.Status, first?.status]).toEqual(['Infeasible', 'infeasible']);
      continue;
    }
    holding += 1;
    expect(first?.status).toBe('proven');
    expect((first?.cost ?? 0) / 1000).toBeCloseTo(second.ObjectiveValue, 2);
  }
  expect(holding).toBeGreaterThanOrEqual(6);
}, 60_000);
