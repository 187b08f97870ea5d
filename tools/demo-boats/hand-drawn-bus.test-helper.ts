import { expect, test } from 'vitest';
import { busFigures } from '../../src/core/backbone/bus-figures.ts';
import { checkLayout } from '../../src/core/backbone/check-layout.ts';
import { layoutProblems } from '../../src/core/backbone/layout-problems.ts';
import type { Layout, LayoutStep, Problem } from '../../src/core/backbone/problem.ts';
import type { Boat } from '../../src/core/boat/boat-schema.ts';
import type { Table } from './table.ts';

type Design = Table['goodDesign'][number];

/** A place passed twice has its tees on the first pass. */
const walkOf = (design: Design, { ways, places, devices }: Problem): LayoutStep[] =>
  design.walk.map((place, step) => {
    const before = design.walk[step - 1];
    const via = ways.find(({ a, b }) => (a === before && b === place) || (b === before && a === place))?.id;
    const isFirst = design.walk.indexOf(place) === step;
    const portOf = (kit: string): string => devices.find(({ id }) => id.startsWith(`${kit}.`))?.id ?? kit;
    const served = design.tees.filter(({ teeAt }) => teeAt === place).map(({ kit }) => portOf(kit));
    const wanted = places.find(({ id }) => id === place)?.spares ?? 0;
    const spares = Array.from({ length: wanted }, (_, n) => `spare@${place}#${n + 1}`);
    const tees = [...served, ...spares, ...(place === design.feedPlace ? ['feed'] : [])];
    return { place, ...(via === undefined ? {} : { via }), tees: isFirst ? tees : [] };
  });

/**
 * Tests of a bus drawn and added up by hand against the program's own figures for the same drawing. `broken` says which
 * limits the drawing is known to break.
 */
export const testHandDrawnBus = (boat: Boat, design: Design, broken: readonly string[] = []): void => {
  const problem = layoutProblems(boat).find(({ bus }) => bus === design.bus);
  if (problem === undefined) throw new Error(`There is no bus ${design.bus}.`);
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

  test(broken.length === 0 ? 'keeps every limit of the bus' : `breaks a limit: ${broken.join(' ')}`, () => {
    expect(checkLayout(problem, layout).broken).toEqual(broken);
  });

  test('the trunk is as long as added up by hand, also at its longest', () => {
    expect([entry.lengthM, entry.longestM]).toEqual([design.trunkM, design.trunkLongestM]);
  });

  test('the drops are as long as added up by hand, one by one and together', () => {
    const byKit = new Map(entry.drops.map(({ port, lengthM }) => [port.split('.')[0], lengthM]));
    expect(byKit).toEqual(new Map(design.tees.map(({ kit, dropM }) => [kit, dropM])));
    expect(entry.drops.reduce((sum, drop) => sum + drop.lengthM, 0)).toBeCloseTo(design.dropsSumM, 9);
    expect(Math.max(...entry.drops.map(({ lengthM }) => lengthM))).toBe(design.longestDropM);
    for (const { kit, dropLongestM } of design.tees) {
      const bought = entry.drops.find(({ port }) => port.startsWith(`${kit}.`))?.boughtM ?? 0;
      expect(bought).toBeGreaterThanOrEqual(dropLongestM);
    }
  });

  test('devices and LEN are as counted by hand', () => {
    expect([entry.devices, entry.len]).toEqual([design.devices, design.len]);
  });

  test('loses less than the limit of a battery feed', () => {
    expect(Math.max(...entry.volts.map(({ dropV }) => dropV))).toBeLessThan(1.5);
    expect(entry.farthestM).toBeLessThan(design.limitM);
  });
};
