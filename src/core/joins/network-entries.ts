import type { BoatIndex } from '../boat/boat-index.ts';
import { lastPhase } from '../boat/phase.ts';
import type { NetworkEntry, StandingJoin } from '../plan-shape.ts';
import type { Router } from '../ways/routes.ts';
import { type Network, networksOf } from './networks.ts';
import { hubBudgetW, socketLoads } from './socket-power.ts';
import { switchPlace } from './switch-place.ts';

type HubEntry = NetworkEntry['hubs'][number];

const hubEntry = (
  at: { readonly index: BoatIndex; readonly router: Router },
  network: Network,
  { kit, sockets, free }: Network['hubs'][number],
): HubEntry => {
  const places = switchPlace(at, network, kit);
  const loads = socketLoads(at.index, network).filter(({ socket }) => socket.kit === kit);
  const budgetW = hubBudgetW(at.index, kit);
  return {
    kit,
    sockets: sockets.length,
    free,
    ...(places === undefined
      ? {}
      : {
          cableM: places.now.cableMm / 1000,
          best: { place: places.best.place, cableM: places.best.cableMm / 1000 },
        }),
    ...(loads.length === 0
      ? {}
      : {
          reservedW: loads.reduce((sum, { sourceW = 0 }) => sum + sourceW, 0),
          ...(budgetW === undefined ? {} : { budgetW }),
        }),
  };
};

/** The networks of the last phase as the plan tells them. Sorted by id. */
export const networkEntries = ({
  index,
  router,
  joins,
}: {
  readonly index: BoatIndex;
  readonly router: Router;
  readonly joins: readonly StandingJoin[];
}): NetworkEntry[] =>
  networksOf(index, lastPhase(index.boat), joins).map((network) => ({
    id: network.id,
    units: [...network.units],
    hubs: network.hubs.map((hub) => hubEntry({ index, router }, network, hub)),
    radios: [...network.radios],
  }));
