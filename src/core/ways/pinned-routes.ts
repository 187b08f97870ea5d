import type { Boat } from '../boat/boat-schema.ts';
import { addLengths, type LineRoute, type Router } from './routes.ts';

/** How far a route is settled: by choice, bought for, or in place. */
type RoutePin = NonNullable<NonNullable<Boat['pins']>['routes']>[string];

/** The route a person has settled for a line; absent where none is. */
export const routePin = ({ pins }: Pick<Boat, 'pins'>, line: string): RoutePin | undefined =>
  pins?.routes !== undefined && Object.hasOwn(pins.routes, line) ? pins.routes[line] : undefined;

/** The ways of a pin walked from one place to another, whichever way round they were entered; absent where they do not lead there. */
export const pinnedRoute = (
  router: Pick<Router, 'along'>,
  { ways }: Pick<RoutePin, 'ways'>,
  { from, to }: { readonly from: string; readonly to: string },
): LineRoute | undefined =>
  [ways, ways.toReversed()]
    .map((order) => router.along({ from, ways: order }))
    .find((route) => route?.places.at(-1) === to);

/**
 * The settled ways of a line walked from one place to wherever they lead, whichever way round they were entered; absent where
 * none are settled or they do not start there.
 */
export const pinnedStart = (
  router: Pick<Router, 'along'>,
  boat: Pick<Boat, 'pins'>,
  { line, from }: { readonly line: string; readonly from: string },
): LineRoute | undefined => {
  const pin = routePin(boat, line);
  const orders = pin === undefined ? [] : [pin.ways, pin.ways.toReversed()];
  return orders.flatMap((ways) => router.along({ from, ways }) ?? [])[0];
};

/** Two routes of which the second starts where the first ends, as one. */
export const oneAfterOther = (first: LineRoute, second: LineRoute): LineRoute => ({
  places: [...first.places, ...second.places.slice(1)],
  ways: [...first.ways, ...second.ways],
  ...addLengths([first, second]),
});

/** A router that leads each line with a settled route by it, even where its ways do not allow that, and every other as before. */
export const withPinnedRoutes = (router: Router, boat: Pick<Boat, 'pins'>): Router => ({
  ...router,
  cheapest: (ask) => {
    const pin = ask.line === undefined ? undefined : routePin(boat, ask.line);
    return (pin === undefined ? undefined : pinnedRoute(router, pin, ask)) ?? router.cheapest(ask);
  },
});
