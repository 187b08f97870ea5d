import { type BoatIndex, indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import type { LineEntry } from '../plan-shape.ts';
import { routeThrough, type Through } from '../ways/route-through.ts';
import { type LineRoute, makeRouter, type Router } from '../ways/routes.ts';
import { mayBeLed } from './may-be-led.ts';

/** Another route a line may take: what it is led through, the places and ways of it, and its length with its tails. */
export interface LeadChoice {
  readonly through: Through;
  readonly places: readonly string[];
  readonly ways: readonly string[];
  readonly lengthM: number;
  readonly longestM: number;
}

/** A cable that comes back to where it has been is only longer. */
const goesBack = ({ places }: LineRoute): boolean => new Set(places).size < places.length;

interface Asked {
  readonly index: BoatIndex;
  readonly router: Router;
  readonly line: LineEntry;
  readonly now: LineRoute;
}

const choiceOf = ({ index, router, line, now }: Asked, through: Through): LeadChoice[] => {
  const [from = '', to = ''] = [line.places[0], line.places.at(-1)];
  const route = routeThrough({ index, router, kind: line.kind, from, to, through });
  if (route === undefined || goesBack(route) || route.ways.join() === line.ways.join()) return [];
  const { places, ways, mm, longestMm } = route;
  return [
    {
      through,
      places,
      ways,
      lengthM: line.lengthM + (mm - now.mm) / 1000,
      longestM: line.longestM + (longestMm - now.longestMm) / 1000,
    },
  ];
};

/**
 * Where else one line may be led: for every other place, and every other way, the route of least cost through it from one end
 * to the other. Places first, each in the order of the boat file. Left out are those that nothing leads to, those it is led
 * through already on the same route, and detours that come back to where they have been.
 *
 * @example leadChoices(boat, pair).map(({ through }) => through) // [{ place: 'mast-base' }, { way: 'helm-mast' }]
 */
export const leadChoices = (boat: Boat, line: LineEntry): LeadChoice[] => {
  const index = indexBoat(boat);
  const router = makeRouter(index);
  const now = router.along({ from: line.places[0] ?? '', ways: line.ways });
  if (now === undefined || !mayBeLed(line)) return [];
  const ends = new Set([line.places[0], line.places.at(-1)]);
  const asked = { index, router, line, now };
  return [
    ...boat.places.filter(({ id }) => !ends.has(id)).map(({ id }) => ({ place: id })),
    ...boat.ways.map(({ id }) => ({ way: id })),
  ].flatMap((through) => choiceOf(asked, through));
};
