import { describe, expect, test } from 'vitest';
import { busFigures } from '../../src/core/backbone/bus-figures.ts';
import { checkLayout } from '../../src/core/backbone/check-layout.ts';
import { layoutProblems } from '../../src/core/backbone/layout-problems.ts';
import type { Layout, LayoutStep, Problem } from '../../src/core/backbone/problem.ts';
import { gannet, gannetTable } from './gannet.ts';

const [design] = gannetTable().goodDesign;
const [problem] = layoutProblems(gannet());

const walkOf = (drawn: NonNullable<typeof design>, { ways }: Problem): LayoutStep[] =>
  drawn.walk.map((place, step) => {
    const before = drawn.walk[step - 1];
    const via = ways.find(({ a, b }) => (a === before && b === place) || (b === before && a === place))?.id;
    const served = drawn.tees.filter(({ teeAt }) => teeAt === place).map(({ kit }) => `${kit}.n2k`);
    return {
      place,
      ...(via === undefined ? {} : { via }),
      tees: place === drawn.feedPlace ? [...served, 'feed'] : served,
    };
  });

describe("Gannet's backbone as drawn by hand", () => {
  if (design === undefined || problem === undefined) throw new Error('Gannet has no bus.');
  const drawn: Layout = {
    problem: problem.hash,
    grade: design.grade,
    walk: walkOf(design, problem),
    cost: 0,
    bound: 0,
    status: 'pinned',
    work: 0,
  };
  const layout = { ...drawn, cost: checkLayout(problem, drawn).cost };
  const { entry } = busFigures(problem, layout);

  test('keeps every limit of the bus', () => {
    expect(checkLayout(problem, layout).broken).toEqual([]);
  });

  test('trunk 12.95 m, at the longest 13.55 m, as added up by hand', () => {
    expect([entry.lengthM, entry.longestM]).toEqual([design.trunkM, design.trunkLongestM]);
  });

  test('15 drops, 23.95 m together, the longest 3.95 m, each as added up by hand', () => {
    const byHand = new Map(design.tees.map(({ kit, dropM }) => [`${kit}.n2k`, dropM]));
    expect(new Map(entry.drops.map(({ port, lengthM }) => [port, lengthM]))).toEqual(byHand);
    expect(entry.drops.reduce((sum, drop) => sum + drop.lengthM, 0)).toBeCloseTo(design.dropsSumM, 9);
    expect(Math.max(...entry.drops.map(({ lengthM }) => lengthM))).toBe(design.longestDropM);
    expect([entry.devices, entry.len]).toEqual([design.devices, design.len]);
    for (const { kit, dropLongestM } of design.tees) {
      const bought = entry.drops.find(({ port }) => port === `${kit}.n2k`)?.boughtM ?? 0;
      expect(bought).toBeGreaterThanOrEqual(dropLongestM);
    }
  });

  test('loses less than the limit of a battery feed', () => {
    expect(Math.max(...entry.volts.map(({ dropV }) => dropV))).toBeLessThan(1.5);
    expect(entry.farthestM).toBeLessThan(design.limitM);
  });
});
