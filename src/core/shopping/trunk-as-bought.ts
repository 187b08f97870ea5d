import { stopsOf } from '../backbone/bus-lines.ts';
import { checkLayout } from '../backbone/check-layout.ts';
import type { Layout, Problem, ProblemWay } from '../backbone/problem.ts';
import { lineId } from '../ways/line-entry.ts';

/** One bus as planned, in whole numbers. */
export interface LaidBus {
  readonly problem: Problem;
  readonly layout: Layout;
}

/** The step of the walk by which each stretch of trunk is reached from the tee before it, by line id. */
const stretchSteps = ({ problem, layout: { walk } }: LaidBus): ReadonlyMap<string, number> => {
  const steps = new Map<string, number>();
  const stops = stopsOf(walk);
  for (const [n, stop] of stops.entries()) {
    const next = stops[n + 1];
    if (next === undefined) continue;
    const id = lineId({ kind: 'trunk', ends: [`${problem.bus}/${stop.last}`, `${problem.bus}/${next.first}`] });
    let name = id;
    for (let count = 2; steps.has(name); count += 1) name = `${id}#${count}`;
    steps.set(name, next.step);
  }
  return steps;
};

/**
 * The limits that a bus breaks once its trunk is as long as it is bought, in words; `excessMm` is what the pieces of each
 * stretch are longer than the longest it could be. Cable that is too long is coiled up somewhere, and still is cable.
 */
export const brokenAsBought = (bus: LaidBus, excessMm: ReadonlyMap<string, number>): readonly string[] => {
  const { problem, layout } = bus;
  const excessAt = new Map<number, number>();
  for (const [line, step] of stretchSteps(bus)) excessAt.set(step, excessMm.get(line) ?? 0);
  const ways = new Map(problem.ways.map((way) => [way.id, way]));
  const own: ProblemWay[] = [];
  const walk = layout.walk.map((step, n) => {
    const way = step.via === undefined ? undefined : ways.get(step.via);
    if (way === undefined) return step;
    // Each pass of the walk gets a way of its own, since two stretches on one way may be bought at different lengths.
    const id = `${way.id}#${n}`;
    own.push({ ...way, id, maxMm: way.maxMm + (excessAt.get(n) ?? 0), trunk: 1, drop: false });
    return { ...step, via: id };
  });
  return checkLayout({ ...problem, ways: [...problem.ways, ...own] }, { ...layout, walk }).broken;
};

/** The limits a layout breaks, whatever it says that it costs. */
export const brokenLimits = (problem: Problem, layout: Layout): readonly string[] => {
  const { cost } = checkLayout(problem, layout);
  return checkLayout(problem, { ...layout, cost, bound: 0 }).broken;
};
