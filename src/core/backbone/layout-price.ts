import { busDrops } from './bus-drops.ts';
import type { Layout, Problem } from './problem.ts';

/** One part of what a layout costs. `cost` in thousandths of a hundredth, as that of the layout; parts that cost nothing are left out. */
export interface PricePart {
  readonly part: 'trunk' | 'drops' | 'tees' | 'terminators' | 'feed' | 'work';
  readonly cost: number;
  /** how many, or how long together where it is cable */
  readonly count?: number;
  readonly lengthM?: number;
}

/** The price of a layout in its parts, which add up to its cost; trunk that lies aboard already costs nothing. */
export const layoutPrice = (problem: Problem, { grade: gradeId, walk }: Layout): PricePart[] => {
  const grade = problem.grades.find(({ id }) => id === gradeId);
  if (grade === undefined) return [];
  const { prices, feed } = problem;
  const ways = new Map(problem.ways.map((way) => [way.id, way]));
  const passes = [
    ...walk.map(({ via }) => ({ via, sign: 1 })),
    ...(problem.held ?? []).map(({ via }) => ({ via, sign: -1 })),
  ].flatMap(({ via, sign }) => {
    const way = via === undefined ? undefined : ways.get(via);
    return way === undefined ? [] : [{ way, sign }];
  });
  const trunkMm = passes.reduce((sum, { way, sign }) => sum + sign * way.mm, 0);
  const work = passes.reduce((sum, { way, sign }) => sum + sign * way.extra, 0);
  const dropsMm = busDrops(problem, walk).reduce((sum, { cable }) => sum + (cable?.mm ?? 0), 0);
  const tees = walk.flatMap(({ tees: own }) => own);
  const fedAt = walk.find(({ tees: own }) => own.includes('feed'))?.place;
  const leadMm = feed.reach.find(({ place }) => place === fedAt)?.mm ?? 0;
  const parts: PricePart[] = [
    { part: 'trunk', cost: trunkMm * grade.trunkPerM, lengthM: trunkMm / 1000 },
    { part: 'drops', cost: dropsMm * grade.dropPerM, lengthM: dropsMm / 1000 },
    { part: 'tees', cost: 1000 * tees.length * prices.tee, count: tees.length },
    { part: 'terminators', cost: 2000 * prices.terminator, count: 2 },
    {
      part: 'feed',
      cost: fedAt === undefined ? 0 : 1000 * prices.feed + leadMm * feed.leadPerM,
      lengthM: leadMm / 1000,
    },
    { part: 'work', cost: 1000 * work },
  ];
  return parts.filter(({ cost }) => cost !== 0);
};
