import loadHighs from 'highs';
import { expect, test } from 'vitest';
import { solveWork } from './solve-work.ts';
import { drawnWork, drawOf } from './some-work.test-helper.ts';
import { lpWeights, workLp } from './work-lp.test-helper.ts';

test('a general solver of integer programmes finds the same least cost for work of six to eight jobs', async () => {
  const highs = await loadHighs();
  let holding = 0;
  for (let seed = 300; seed < 306; seed += 1) {
    const draw = drawOf(seed);
    const problem = drawnWork(draw, { jobs: 6 + draw(3), days: 7, perDay: 3, isEasy: seed % 3 > 0 });
    const first = [...solveWork(problem, { work: 600_000 })].at(-1);
    const lp = workLp(problem);
    const second = lp === 'none' ? undefined : highs.solve(lp, { mip_rel_gap: 0, output_flag: false });
    if (second?.Status !== 'Optimal') {
      expect({ seed, status: first?.status }).toEqual({ seed, status: undefined });
      continue;
    }
    holding += 1;
    const { dark, lastDay, ascents } = first?.cost ?? { dark: -1, lastDay: 0, ascents: 0 };
    expect({ seed, status: first?.status, cost: dark * lpWeights.dark + lastDay * lpWeights.day + ascents }).toEqual({
      seed,
      status: 'proven',
      cost: Math.round(second.ObjectiveValue),
    });
  }
  expect(holding).toBeGreaterThanOrEqual(3);
}, 120_000);
