import type { NetworkEntry, Plan } from '../../core/plan-shape.ts';
import { printCount } from './print-figure.ts';

/** What network rows look up: names of units and of places. */
interface NetworkNames {
  readonly kit: ReadonlyMap<string, { readonly name: string; readonly place: string }>;
  readonly places: ReadonlyMap<string, { readonly name: string }>;
}

/** One switch or router with its sockets and its cable, or a network without one. */
export interface NetworkRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
}

type Hub = NetworkEntry['hubs'][number];

const cableWords = ({ places }: NetworkNames, { cableM, best }: Hub): string[] => {
  if (cableM === undefined || best === undefined) return [];
  const saved = cableM - best.cableM;
  const place = places.get(best.place)?.name ?? best.place;
  return [
    `${cableM.toFixed(2)} m of cable`,
    saved < 0.005 ? 'least of all places' : `${best.cableM.toFixed(2)} m from ${place}`,
  ];
};

const powerWords = ({ reservedW, budgetW }: Hub): string[] =>
  reservedW === undefined ? [] : [`feeds its sockets ${reservedW} W${budgetW === undefined ? '' : ` of ${budgetW} W`}`];

const hubRow = (names: NetworkNames, network: NetworkEntry, hub: Hub): NetworkRow => ({
  key: `${network.id} ${hub.kit}`,
  what: names.kit.get(hub.kit)?.name ?? hub.kit,
  fact: [
    `${hub.sockets - hub.free} of ${hub.sockets} sockets used`,
    ...cableWords(names, hub),
    ...powerWords(hub),
  ].join(', '),
  lights: [hub.kit, ...network.units],
});

/** The networks of a plan: a row for each switch or router, or one for a network of a few units joined straight to each other. */
export const networkRows = (names: NetworkNames, { networks }: Pick<Plan, 'networks'>): NetworkRow[] =>
  networks.flatMap((network) =>
    network.hubs.length > 0
      ? network.hubs.map((hub) => hubRow(names, network, hub))
      : [
          {
            key: network.id,
            what: network.units.map((unit) => names.kit.get(unit)?.name ?? unit).join(' and '),
            fact: `${printCount(network.units.length, 'unit')} joined without a switch`,
            lights: network.units,
          },
        ],
  );
