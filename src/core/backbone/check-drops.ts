import type { Problem, ProblemWay } from './problem.ts';

/** A tee of the layout, found again on the walk. */
export interface PlacedTee {
  readonly tee: string;
  readonly step: number;
  readonly place: string;
}

/** A device with the length of its drop: nominal, and as bought for its longest length. */
export interface MeasuredDrop extends PlacedTee {
  readonly len: number;
  readonly minMv: number;
  readonly mm: number;
  readonly boughtMm: number;
}

/** Routes found before, by problem and place: one problem is asked of layout after layout, and nobody changes it in place. */
const routesOf = new WeakMap<Problem, Map<string, ReadonlyMap<string, DropRoute>>>();

/** Every device that has a tee, with its drop; infinite where no way for drops leads there. */
export const measureDrops = (problem: Problem, tees: readonly PlacedTee[]): MeasuredDrop[] => {
  const routesFrom = routesOf.get(problem) ?? new Map<string, ReadonlyMap<string, DropRoute>>();
  routesOf.set(problem, routesFrom);
  const devices = new Map(problem.devices.map((device) => [device.id, device]));
  return tees.flatMap((placed) => {
    const device = devices.get(placed.tee);
    if (device === undefined) return [];
    const routes = routesFrom.get(placed.place) ?? dropRoutes(problem, placed.place);
    routesFrom.set(placed.place, routes);
    const route = routes.get(device.place) ?? noRoute;
    const longestMm = route.longestMm + device.maxTailMm;
    const boughtMm = pieceFor(problem, longestMm);
    return [{ ...placed, len: device.len, minMv: device.minMv, mm: route.mm + device.tailMm, boughtMm }];
  });
};

const pieceFor = (problem: Problem, longestMm: number): number => {
  const covering = problem.pieces.filter((piece) => piece >= longestMm);
  return covering.length === 0 ? longestMm : Math.min(...covering);
};

interface DropRoute {
  readonly mm: number;
  readonly longestMm: number;
}

const noRoute: DropRoute = { mm: Number.POSITIVE_INFINITY, longestMm: Number.POSITIVE_INFINITY };

/**
 * From a place to every other the least nominal length over ways that take drops, of those the least longest length; found
 * by relaxing until nothing gets shorter.
 */
const dropRoutes = (problem: Problem, from: string): ReadonlyMap<string, DropRoute> => {
  const ways = problem.ways.filter(({ drop }) => drop);
  const known = new Map([[from, { mm: 0, longestMm: 0 }]]);
  const relax = (here: string, there: string, { mm, maxMm }: ProblemWay): boolean => {
    const at = known.get(here);
    if (at === undefined) return false;
    const next = { mm: at.mm + mm, longestMm: at.longestMm + maxMm };
    const now = known.get(there) ?? noRoute;
    if (next.mm > now.mm || (next.mm === now.mm && next.longestMm >= now.longestMm)) return false;
    known.set(there, next);
    return true;
  };
  for (let changed = true; changed; ) {
    changed = false;
    for (const way of ways) {
      const forth = relax(way.a, way.b, way);
      changed = relax(way.b, way.a, way) || forth || changed;
    }
  }
  return known;
};

/** The limits of single drops and of all together that a layout breaks, in words. */
export const brokenDrops = (problem: Problem, drops: readonly MeasuredDrop[]): string[] => {
  const { dropMm, dropsMm } = problem.limits;
  const broken: string[] = [];
  for (const { tee, place, boughtMm } of drops) {
    if (boughtMm === Number.POSITIVE_INFINITY) broken.push(`No way for a drop leads from ${place} to ${tee}.`);
    else if (boughtMm > dropMm) {
      broken.push(`The drop to ${tee} is ${boughtMm / 1000} m as bought; the limit is ${dropMm / 1000} m.`);
    }
  }
  const allMm = drops.reduce((sum, { boughtMm }) => sum + boughtMm, 0);
  if (Number.isFinite(allMm) && allMm > dropsMm) {
    broken.push(`All drops are ${allMm / 1000} m as bought; the limit is ${dropsMm / 1000} m.`);
  }
  return broken;
};
