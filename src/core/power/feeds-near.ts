import type { BoatIndex } from '../boat/boat-index.ts';
import type { CompassFeed } from '../compass-shape.ts';
import { compassLimits } from '../facts/compass-figures.ts';
import type { LineEntry } from '../plan-shape.ts';
import type { FeedEntry } from '../power-shape.ts';
import { distanceToRoute, type Spot } from './distance-to-route.ts';
import { feedAtCompass, layingOf } from './feed-at-compass.ts';

/** One feed that carries current, with the points its route passes and how its wires lie. */
export interface FeedRoute {
  readonly feed: FeedEntry;
  readonly laying: ReturnType<typeof layingOf>;
  readonly route: readonly Spot[];
}

/** Every feed that carries current and has a route. */
export const feedRoutes = (input: {
  readonly index: BoatIndex;
  readonly lines: readonly LineEntry[];
  readonly feeds: readonly FeedEntry[];
}): FeedRoute[] => {
  const { index } = input;
  const lines = new Map(input.lines.map((line) => [line.id, line]));
  return input.feeds.flatMap((feed): FeedRoute[] => {
    const line = lines.get(feed.line);
    if (line === undefined || feed.loadA === 0) return [];
    const route = line.places.flatMap((place) => index.places.get(place) ?? []);
    return [{ feed, laying: layingOf(index, feed, line), route }];
  });
};

/** What the feeds within 5 m of a spot do to a compass there. */
export const feedsNear = (routes: readonly FeedRoute[], at: Spot, horizontalUt: number): CompassFeed[] =>
  routes.flatMap(({ feed, laying, route }): CompassFeed[] => {
    const distanceM = distanceToRoute(at, route);
    if (distanceM >= compassLimits.unknownItem.value) return [];
    return [feedAtCompass({ feed, laying, distanceM, horizontalUt })];
  });
