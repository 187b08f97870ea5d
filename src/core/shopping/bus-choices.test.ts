import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { checkLayout } from '../backbone/check-layout.ts';
import { layoutProblems } from '../backbone/layout-problems.ts';
import type { Layout } from '../backbone/problem.ts';
import { solveLayout } from '../backbone/solve-layout.ts';
import { applyEdit } from '../boat/history.ts';
import { readBoat } from '../boat/read-boat.ts';
import { startHistory } from '../boat/start-history.ts';
import { plan } from '../plan.ts';

const gannet = readBoat(readFileSync(new URL('../../../examples/gannet/gannet.boat.json', import.meta.url), 'utf8'));
const problems = layoutProblems(gannet);
const layouts = new Map<string, Layout>();
for (const problem of problems) {
  for (const layout of solveLayout(problem, { work: 200_000 })) layouts.set(problem.hash, layout);
}
const [bus] = plan(gannet, layouts).buses;

test('the next best layout keeps every limit, is dearer, and its parts add up to its cost', () => {
  const [problem] = problems;
  const { nextBest } = bus ?? {};
  if (problem === undefined || nextBest === undefined) throw new Error('Gannet has no next best layout.');
  const { grade, cost, walk } = nextBest;
  const layout: Layout = { problem: problem.hash, grade, walk, cost, bound: 0, status: 'gap', work: 0 };
  expect(checkLayout(problem, layout).broken).toEqual([]);
  expect(cost).toBeGreaterThan(bus?.layout.cost ?? Number.POSITIVE_INFINITY);
  expect(nextBest.price.reduce((sum, part) => sum + part.cost, 0)).toBe(cost);
});

test('settled, the next best costs what was said of it, in parts and in pieces', () => {
  const nextBest = bus?.nextBest;
  if (nextBest === undefined) throw new Error('Gannet has no next best layout.');
  const { grade, walk } = nextBest;
  const settled = applyEdit(startHistory(gannet), 'pin-layout', { bus: 'nav', grade, walk, state: 'fixed' }).boat;
  const [after] = plan(settled, layouts).buses;
  expect(after?.layout).toMatchObject({ status: 'pinned', cost: nextBest.cost, broken: [] });
  expect(after?.price).toEqual(nextBest.price);
  expect(after).not.toHaveProperty('nextBest');
  const cable = plan(settled, layouts).shopping.filter(({ kind }) => kind === 'trunk' || kind === 'drop');
  const sum = cable.reduce((all, { count, each = 0 }) => all + count * each, 0);
  expect(sum).toBe(nextBest.cableCost);
});
