import type { BoatIndex } from '../boat/boat-index.ts';
import { keptCables } from '../ways/line-entry.ts';
import type { LayoutStep, ProblemWay } from './problem.ts';

/**
 * The walk of the trunk of a bus that lies already: its kept trunk cables laid end to end. Where they do not all meet it is
 * the longest run of them, for the trunk is one walk and the rest is no part of it; absent where no kept trunk can be placed.
 */
export const heldWalk = ({
  index,
  bus,
  ways,
}: {
  readonly index: BoatIndex;
  readonly bus: string;
  readonly ways: readonly ProblemWay[];
}): readonly LayoutStep[] | undefined => {
  const known = new Map(ways.map((way) => [way.id, way]));
  const cables = keptCables({ index, serves: [bus], kind: 'trunk' });
  let runs = cables.flatMap((cable) => stepsAlong({ known, from: cable.from.place, ways: cable.ways }) ?? []);
  for (let joined = joinTwo(runs); joined !== undefined; joined = joinTwo(runs)) runs = joined;
  const lengthMm = (run: Run): number => run.reduce((sum, { via = '' }) => sum + (known.get(via)?.mm ?? 0), 0);
  return runs.toSorted((one, other) => lengthMm(other) - lengthMm(one))[0];
};

type Run = readonly LayoutStep[];

/** The steps of a cable, as a list of one run; nothing where its ways do not lie end to end. */
const stepsAlong = ({
  known,
  from,
  ways,
}: {
  readonly known: ReadonlyMap<string, ProblemWay>;
  readonly from: string;
  readonly ways: readonly string[];
}): Run[] | undefined => {
  const run: LayoutStep[] = [{ place: from, tees: [] }];
  for (const id of ways) {
    const way = known.get(id);
    const here = run.at(-1)?.place;
    if (way === undefined || (way.a !== here && way.b !== here)) return undefined;
    run.push({ place: way.a === here ? way.b : way.a, via: id, tees: [] });
  }
  return run.length > 1 ? [run] : undefined;
};

/** The runs with two of them made one that meet at their ends; nothing when none do. */
const joinTwo = (runs: readonly Run[]): Run[] | undefined => {
  for (const [n, one] of runs.entries()) {
    for (const [m, other] of runs.entries()) {
      if (n === m) continue;
      const rest = runs.filter((_, k) => k !== n && k !== m);
      for (const [first, second] of [
        [one, other],
        [turned(one), other],
        [one, turned(other)],
      ] as const) {
        if (first.at(-1)?.place === second[0]?.place) return [[...first, ...second.slice(1)], ...rest];
      }
    }
  }
  return undefined;
};

/** A run walked the other way. */
const turned = (run: Run): Run =>
  run.toReversed().map(({ place }, n): LayoutStep => {
    const via = run[run.length - n]?.via;
    return via === undefined ? { place, tees: [] } : { place, via, tees: [] };
  });
