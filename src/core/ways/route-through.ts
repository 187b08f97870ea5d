import type { BoatIndex } from '../boat/boat-index.ts';
import type { LineKind } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { oneAfterOther } from './pinned-routes.ts';
import type { LineRoute, Router } from './routes.ts';
import { wayCostMm } from './way-cost.ts';

/** What a line is to be led through: a place, or a way from either of its ends. */
export type Through = { readonly place: string } | { readonly way: string };

interface Asked {
  readonly index: BoatIndex;
  readonly router: Pick<Router, 'along' | 'cheapest'>;
  readonly kind: LineKind;
  readonly from: string;
  readonly to: string;
  readonly through: Through;
}

/** The stretches that every such route holds, each from its start: the way in both directions, or no way at the place. */
const middlesOf = ({ index, router, through }: Asked): LineRoute[] => {
  if ('place' in through) {
    const here = index.places.has(through.place) ? router.along({ from: through.place, ways: [] }) : undefined;
    return here === undefined ? [] : [here];
  }
  const ends = index.ways.get(through.way)?.ends ?? [];
  return ends.flatMap((from) => router.along({ from, ways: [through.way] }) ?? []);
};

const costOf = ({ index, router, kind }: Asked, { places, ways }: LineRoute): number =>
  ways.reduce((sum, id, at) => {
    const way = index.ways.get(id);
    const mm = router.along({ from: places[at] ?? '', ways: [id] })?.mm ?? 0;
    return way === undefined ? sum : sum + wayCostMm({ index, way, kind, mm });
  }, 0);

/**
 * The route of least cost from one place to another through a third, or through a way. Up to what it is led through and from
 * there on it keeps to ways that allow the kind; the way it is led through may be one that does not, for a rule to strike.
 * Of two as cheap the one over fewest ways is taken, then the first by id. Absent where nothing leads there, and on from there.
 *
 * @example routeThrough({ index, router, kind: 'pair', from: 'helm', to: 'locker', through: { place: 'mast-base' } })?.ways // ['helm-mast', 'locker-mast']
 */
export const routeThrough = (asked: Asked): LineRoute | undefined => {
  const { router, kind, from, to } = asked;
  const [best] = middlesOf(asked)
    .flatMap((middle): LineRoute[] => {
      const before = router.cheapest({ kind, from, to: middle.places[0] ?? '' });
      const after = router.cheapest({ kind, from: middle.places.at(-1) ?? '', to });
      return before === undefined || after === undefined ? [] : [oneAfterOther(oneAfterOther(before, middle), after)];
    })
    .map((route) => ({ route, cost: costOf(asked, route) }))
    .sort(
      (one, other) =>
        one.cost - other.cost ||
        one.route.ways.length - other.route.ways.length ||
        byCodeUnit(one.route.ways.join(), other.route.ways.join()),
    );
  return best?.route;
};
