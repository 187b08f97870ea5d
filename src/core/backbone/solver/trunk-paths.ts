import { type Route, shortestRoutes } from '../../network/shortest-route.ts';
import type { Ground } from './ground.ts';

/** Cheapest trunk between two places: numbers of the ways, in order; absent where none leads there. */
export type TrunkPaths = (ask: { readonly from: number; readonly to: number }) => readonly number[] | undefined;

/** The cheapest trunk paths of a ground, found when first asked for; a way may be left out. */
export const trunkPaths = (ground: Ground, without?: number): TrunkPaths => {
  const numbers = new Map(ground.ways.map(({ id }, way) => [id, way]));
  const edges = ground.ways
    .filter((_, way) => way !== without)
    .map(({ id, a, b, cost, maxMm }) => ({ id, a: `${a}`, b: `${b}`, mm: cost, longestMm: maxMm }));
  const routesFrom = new Map<number, ReadonlyMap<string, Route>>();
  return ({ from, to }) => {
    const routes = routesFrom.get(from) ?? shortestRoutes({ edges, from: `${from}` });
    routesFrom.set(from, routes);
    return routes.get(`${to}`)?.edges.flatMap((id) => numbers.get(id) ?? []);
  };
};

/** For every way the cheapest trunk between its places without it, with the way itself: the rings of the boat. */
export const trunkRings = (ground: Ground): readonly (readonly number[])[] =>
  ground.ways.flatMap(({ a, b }, way) => {
    const round = trunkPaths(ground, way)({ from: a, to: b });
    return round === undefined ? [] : [[...round, way]];
  });
