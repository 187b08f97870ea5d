import type { BoatIndex } from '../boat/boat-index.ts';
import type { StandingJoin } from '../plan-shape.ts';
import { type PriceList, priceList } from '../prices/price-list.ts';
import type { PortNetwork } from '../readings/port-network.ts';
import type { Reaches } from '../readings/reaches.ts';
import type { Refit } from '../readings/refit.ts';
import { makeRouter, type Router } from '../ways/routes.ts';

/** What cures are looked for in: one boat as it is wired in one phase. */
export interface CureContext {
  readonly index: BoatIndex;
  readonly phase: number;
  readonly network: PortNetwork;
  readonly reaches: Reaches;
  readonly router: Router;
  /** bus of each port that is on one, by `kit.port` */
  readonly busOf: ReadonlyMap<string, string>;
  /** ports wired to another by a join that is no bus, and whether they listen there */
  readonly wired: ReadonlyMap<string, { readonly listens: boolean }>;
  /** places of the units on each bus */
  readonly placesOn: ReadonlyMap<string, readonly string[]>;
  readonly prices: PriceList;
}

/** The context of one boat in one phase, in which the given joins stand. */
export const cureContext = (
  { index, reachesIn }: Refit,
  phase: number,
  joins: readonly StandingJoin[],
): CureContext => {
  const reaches = reachesIn(phase);
  const busOf = new Map<string, string>();
  const placesOn = new Map<string, Set<string>>();
  const wired = new Map<string, { listens: boolean }>();
  for (const { bus, members } of joins) {
    if (bus === undefined) {
      // a join whose other end is not aboard holds nothing
      if (members.length < 2) continue;
      for (const { kit, port, as } of members)
        wired.set(`${kit}.${port}`, { listens: as !== 'talk' || wired.get(`${kit}.${port}`)?.listens === true });
      continue;
    }
    const places = placesOn.get(bus) ?? new Set();
    placesOn.set(bus, places);
    for (const { kit, port } of members) {
      busOf.set(`${kit}.${port}`, bus);
      const place = index.kit.get(kit)?.place;
      if (place !== undefined) places.add(place);
    }
  }
  return {
    index,
    phase,
    network: reaches.network,
    reaches,
    router: makeRouter(index),
    busOf,
    wired,
    placesOn: new Map([...placesOn].map(([bus, places]) => [bus, [...places]])),
    prices: priceList(index.boat),
  };
};
