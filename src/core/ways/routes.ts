import type { BoatIndex } from '../boat/boat-index.ts';
import type { LineKind } from '../boat/boat-schema.ts';
import { type Route, type RouteEdge, shortestRoutes } from '../network/shortest-route.ts';
import { allowsLine } from './allowed-lines.ts';
import { wayCostMm } from './way-cost.ts';
import { type WayLength, wayLengths } from './way-lengths.ts';

/** The route of a line: places first to last, the ways between them, and the lengths of those ways added. */
export interface LineRoute extends WayLength {
  readonly places: readonly string[];
  readonly ways: readonly string[];
}

interface RouteAsk {
  readonly kind: LineKind;
  readonly from: string;
  readonly to: string;
}

/** Finds routes on one boat; routes once found are kept, so one router serves a whole plan. */
export interface Router {
  /** least length over ways that allow this kind; absent where no such route exists */
  between(ask: RouteAsk): LineRoute | undefined;
  /**
   * The least cost of length, heat, wet, neighbours and work over ways that allow this kind, `line` where it is led by an
   * agreement with others; its length is the true one. Trunk and drops of a bus are laid by their own problem instead.
   */
  cheapest(ask: RouteAsk & { readonly line?: string }): LineRoute | undefined;
  /** the same ways walked as told, for a trunk or a kept cable; absent where they do not hang together */
  along(ask: { readonly from: string; readonly ways: readonly string[] }): LineRoute | undefined;
}

/**
 * A router for one boat. Of equally long routes the least doubtful is taken, then the one over fewest ways, then the first by id.
 *
 * @example makeRouter(index).between({ kind: 'drop', from: 'helm', to: 'locker' })?.mm // 2200
 */
export const makeRouter = (index: BoatIndex): Router => {
  const lengths = wayLengths({ ways: index.boat.ways, places: index.places });
  const routesByStart = new Map<string, ReadonlyMap<string, Route>>();
  const edgesByKind = new Map<string, readonly RouteEdge[]>();

  const routesFor = (by: 'length' | 'cost', kind: LineKind, from: string): ReadonlyMap<string, Route> => {
    const key = `${by} ${kind} ${from}`;
    const edgeKey = `${by} ${kind}`;
    const edges =
      edgesByKind.get(edgeKey) ??
      (by === 'length' ? edgesFor({ index, lengths, kind }) : costEdges({ index, lengths, kind }));
    const routes = routesByStart.get(key) ?? shortestRoutes({ edges, from });
    edgesByKind.set(edgeKey, edges);
    routesByStart.set(key, routes);
    return routes;
  };

  const along: Router['along'] = ({ from, ways }) => {
    const places = [from];
    let total: WayLength = { mm: 0, longestMm: 0, guessed: false };
    for (const id of ways) {
      const length = lengths.get(id);
      const next = index.ways.get(id)?.ends;
      const here = places.at(-1);
      if (length === undefined || next === undefined || here === undefined || !next.includes(here)) return undefined;
      places.push(next[0] === here ? next[1] : next[0]);
      total = addLengths([total, length]);
    }
    return { places, ways, ...total };
  };

  const found = (by: 'length' | 'cost', { kind, from, to }: RouteAsk): LineRoute | undefined => {
    const route = index.places.has(from) ? routesFor(by, kind, from).get(to) : undefined;
    return route === undefined ? undefined : along({ from, ways: route.edges });
  };

  return { along, between: (ask) => found('length', ask), cheapest: (ask) => found('cost', ask) };
};

const edgesFor = ({
  index,
  lengths,
  kind,
}: {
  readonly index: BoatIndex;
  readonly lengths: ReadonlyMap<string, WayLength>;
  readonly kind: LineKind;
}): readonly RouteEdge[] =>
  index.boat.ways.flatMap((way): RouteEdge[] => {
    const length = lengths.get(way.id);
    if (length === undefined || !allowsLine(way, kind)) return [];
    return [{ id: way.id, a: way.ends[0], b: way.ends[1], mm: length.mm, longestMm: length.longestMm }];
  });

/** The ways that allow a kind of line, each with its cost in place of its length. */
export const costEdges = (ask: {
  readonly index: BoatIndex;
  readonly lengths: ReadonlyMap<string, WayLength>;
  readonly kind: LineKind;
}): readonly RouteEdge[] =>
  edgesFor(ask).map((edge) => {
    const way = ask.index.ways.get(edge.id);
    return way === undefined
      ? edge
      : { ...edge, mm: wayCostMm({ index: ask.index, way, kind: ask.kind, mm: edge.mm }) };
  });

/** Lengths laid end to end. */
export const addLengths = (lengths: readonly WayLength[]): WayLength => ({
  mm: lengths.reduce((sum, { mm }) => sum + mm, 0),
  longestMm: lengths.reduce((sum, { longestMm }) => sum + longestMm, 0),
  guessed: lengths.some(({ guessed }) => guessed),
});
