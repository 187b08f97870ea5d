import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { ladderBoat } from '../src/core/backbone/ladder-boat.test-helper.ts';
import { layoutLp } from '../src/core/backbone/layout-lp.test-helper.ts';
import type { Problem } from '../src/core/backbone/problem.ts';
import { solveLayout } from '../src/core/backbone/solve-layout.ts';

/** Debian's package coinor-cbc: a solver of integer programmes that shares nothing with ours nor with the one from npm. */
const hasSolver = spawnSync('which', ['cbc']).status === 0;

const folder = mkdtempSync(join(tmpdir(), 'fairlead-lp-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Least cost in hundredths; nothing where no layout exists. */
const costByOther = (lp: string): number | undefined => {
  const [asked, answered] = [join(folder, 'asked.lp'), join(folder, 'answered.txt')];
  writeFileSync(asked, lp);
  execFileSync('cbc', [asked, 'ratioGap', '0', 'allowableGap', '0', 'solve', 'solution', answered]);
  const [says = ''] = readFileSync(answered, 'utf8').split('\n');
  const value = /^Optimal - objective value ([\d.]+)/.exec(says)?.[1];
  if (value === undefined && !says.startsWith('Infeasible')) throw new Error(`No answer to rely on: ${says}`);
  return value === undefined ? undefined : Number(value);
};

/** One grade on which neither currents nor volts bind, for the programme knows nothing of them. */
const boatFor = (seed: number): Problem => {
  const boat = ladderBoat(seed, { places: 12, devices: 8 });
  const { lostMv: _, ...feed } = boat.feed;
  const grades = boat.grades.slice(1, 2).map((grade) => ({ ...grade, maxMa: 1_000_000, microOhmPerM: 1 }));
  // Of three boats the metres of all drops bind on two, on one of them so hard that there is no layout.
  const dropsMm = [78_000, 12_000, 4000][seed % 3] ?? 0;
  return { ...boat, grades, limits: { ...boat.limits, dropsMm }, feed };
};

describe.skipIf(!hasSolver)('a solver of integer programmes from elsewhere', () => {
  test.each([...Array(10).keys()])('finds the same least cost on boat %i', { timeout: 60_000 }, (seed) => {
    const problem = boatFor(seed);
    const [grade] = problem.grades;
    if (grade === undefined) throw new Error('The boat has no grade of cable.');
    const other = costByOther(layoutLp({ problem, grade, model: 'strong' }));
    const ours = [...solveLayout(problem, { work: 200_000 })].at(-1);
    if (other === undefined) {
      expect(ours?.status).toBe('infeasible');
      return;
    }
    expect(ours?.status).toBe('proven');
    expect((ours?.cost ?? 0) / 1000).toBeCloseTo(other, 2);
  });
});
