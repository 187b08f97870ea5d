import type { BoatIndex } from '../boat/boat-index.ts';
import type { Place } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { Router } from '../ways/routes.ts';
import type { Network } from './networks.ts';

/** A place for a switch, and what the cables from there to everything on it come to, mm without tails. */
export interface SwitchPlace {
  readonly place: string;
  readonly cableMm: number;
}

/** Where a switch may stand: within reach, out of weather, bilge and engine heat. */
const suits = ({ exposure, reach }: Place): boolean =>
  (exposure === 'dry' || exposure === 'damp') && (reach === 'open' || reach === 'panel');

/** What the cables of a hub come to with it at a place; absent where no way for one of them leads there. */
const cableFrom = (router: Router, place: string, others: readonly string[]): number | undefined => {
  let sumMm = 0;
  for (const to of others) {
    const route = router.cheapest({ kind: 'ethernet', from: to, to: place });
    if (route === undefined) return undefined;
    sumMm += route.mm;
  }
  return sumMm;
};

/**
 * The place from which the cables of a hub are shortest together, tried at every place that suits, the others where they
 * are; and what they come to where it stands. Of equal places the first by id. Absent where nothing reaches.
 */
export const switchPlace = (
  { index, router }: { readonly index: BoatIndex; readonly router: Router },
  network: Pick<Network, 'links'>,
  kit: string,
): { readonly now: SwitchPlace; readonly best: SwitchPlace } | undefined => {
  const others = network.links.flatMap(({ ends: [one, other] }) => {
    const far = one.kit === kit ? other : other.kit === kit ? one : undefined;
    return far === undefined || far.kit === kit ? [] : [index.kit.get(far.kit)?.place ?? ''];
  });
  const own = index.kit.get(kit)?.place;
  const nowMm = own === undefined ? undefined : cableFrom(router, own, others);
  if (own === undefined || nowMm === undefined) return undefined;
  const [best] = index.boat.places
    .filter(suits)
    .flatMap(({ id: place }): SwitchPlace[] => {
      const cableMm = cableFrom(router, place, others);
      return cableMm === undefined ? [] : [{ place, cableMm }];
    })
    .sort((one, other) => one.cableMm - other.cableMm || byCodeUnit(one.place, other.place));
  const now = { place: own, cableMm: nowMm };
  return { now, best: best ?? now };
};
