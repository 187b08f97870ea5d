import { type RouteEdge, shortestRoutes } from '../network/shortest-route.ts';
import type { LayoutStep, Problem } from './problem.ts';

/** A device on the walk; `cable` is its drop, as entered and on the piece bought, absent where no way for drops leads to it. */
export interface BusDrop {
  readonly port: string;
  readonly step: number;
  readonly len: number;
  readonly cable?: { readonly mm: number; readonly boughtMm: number };
}

/**
 * The devices that have a tee on the walk, with their drops. A drop takes the shortest route over the ways that allow
 * drops and the device's tail; it is bought as the shortest piece that covers it with every doubt against it, or made to
 * that length.
 */
export const busDrops = (problem: Problem, walk: readonly LayoutStep[]): readonly BusDrop[] => {
  // Each device leaves the map with its first tee: one tee too many in a hand-made layout must not count it twice.
  const devices = new Map(problem.devices.map((device) => [device.id, device]));
  const routesFrom = dropRoutes(problem);
  return walk.flatMap(({ place, tees }, step) =>
    tees.flatMap((tee): BusDrop[] => {
      const device = devices.get(tee);
      if (device === undefined || !devices.delete(tee)) return [];
      const route = routesFrom(place).get(device.place);
      const onTee = { port: tee, step, len: device.len };
      if (route === undefined) return [onTee];
      const boughtMm = pieceFor(problem.pieces, route.longestMm + device.maxTailMm);
      return [{ ...onTee, cable: { mm: route.mm + device.tailMm, boughtMm } }];
    }),
  );
};

const pieceFor = (pieces: readonly number[], longestMm: number): number => {
  const covering = pieces.filter((piece) => piece >= longestMm);
  return covering.length === 0 ? longestMm : Math.min(...covering);
};

interface DropRoute {
  readonly mm: number;
  readonly longestMm: number;
}

/** Routes of drops from a place to every place they reach; those from one place are found once. */
const dropRoutes = (problem: Problem): ((from: string) => ReadonlyMap<string, DropRoute>) => {
  const ways = problem.ways.filter(({ drop }) => drop);
  const edges = ways.map(({ id, a, b, mm, maxMm }): RouteEdge => ({ id, a, b, mm, longestMm: maxMm }));
  const maxMm = new Map(ways.map((way) => [way.id, way.maxMm]));
  const known = new Map<string, ReadonlyMap<string, DropRoute>>();
  return (from) => {
    const before = known.get(from);
    if (before !== undefined) return before;
    const found = new Map<string, DropRoute>();
    for (const [to, { mm, edges: passed }] of shortestRoutes({ edges, from })) {
      found.set(to, { mm, longestMm: passed.reduce((sumMm, id) => sumMm + (maxMm.get(id) ?? 0), 0) });
    }
    known.set(from, found);
    return found;
  };
};
