import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Kit } from '../../boat/boat-schema.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import { lastPhase } from '../../boat/phase.ts';
import type { Port, Sheet } from '../../boat/sheet.ts';
import type { ReadingId } from '../../facts/reading-ids.ts';
import { typicalSheets } from '../../facts/sheets/index.ts';
import { priceList, unitPrice } from '../../prices/price-list.ts';
import type { PortNetwork } from '../../readings/port-network.ts';

/** Kinds of unit that only bring others together: they are bought for what they join. */
export const joiningKinds: ReadonlySet<string> = new Set([
  'converter',
  'multiplexer',
  'gateway',
  'network-switch',
  'router',
]);

/** Places at which a unit to buy is tried: those with most units it could be wired to. */
const mostPlaces = 2;

/** A unit that could be bought, by its sheet, and what it costs. */
export interface Offer {
  readonly unit: Kit;
  readonly sheet: Sheet;
  readonly cost: number;
}

interface Wish {
  /** languages of the ports aboard */
  readonly spoken: ReadonlySet<string>;
  /** readings that do not arrive, and what they are made of */
  readonly wanted: ReadonlySet<ReadingId>;
}

const protocolsOf = (ports: readonly Port[]): ReadonlySet<string> =>
  new Set(ports.map(({ protocol }) => protocol).filter((protocol) => protocol !== 'dc'));

/** Whether a sheet joins languages that are spoken aboard and carries something that is wanted, or is a switch. */
const isOfUse = ({ ports, turns = [], together = [] }: Sheet, { spoken, wanted }: Wish): boolean => {
  if (turns.length > 0 && !turns.some(({ carries }) => carries.some(({ reading }) => wanted.has(reading))))
    return false;
  const known = [...protocolsOf(ports)].filter((protocol) => spoken.has(protocol));
  return turns.length > 0
    ? known.length === protocolsOf(ports).size || known.length > 1
    : together.length > 0 && known.length > 0;
};

/** Protected places a person reaches where units stand: those with most ports of the languages a sheet speaks, then with most ports. */
const placesFor = ({ index, network }: Aboard, sheet: Sheet): readonly string[] => {
  const spoken = protocolsOf(sheet.ports);
  const counts = new Map<string, number>();
  for (const { kit, port } of network.nodes.values()) {
    const place = index.places.get(index.kit.get(kit)?.place ?? '');
    const isFit =
      place !== undefined && place.reach !== 'aloft' && (place.exposure === 'dry' || place.exposure === 'damp');
    if (!isFit) continue;
    const worth = port.protocol !== 'nmea2000' && spoken.has(port.protocol) ? 100 : 1;
    counts.set(place.id, (counts.get(place.id) ?? 0) + worth);
  }
  return [...counts]
    .sort(([one, most], [other, more]) => more - most || byCodeUnit(one, other))
    .slice(0, mostPlaces)
    .map(([place]) => place);
};

interface Aboard {
  readonly index: BoatIndex;
  readonly network: PortNetwork;
}

/** Every converter, multiplexer, bridge and switch that could be bought to join what is aboard, at each place it could stand. */
export const offersFor = (aboard: Aboard, wanted: ReadonlySet<ReadingId>): Offer[] => {
  const { index, network } = aboard;
  const prices = priceList(index.boat);
  const spoken = protocolsOf([...network.nodes.values()].map(({ port }) => port));
  const phase = lastPhase(index.boat);
  return typicalSheets
    .filter(
      (sheet) => joiningKinds.has(sheet.kind) && !sheet.name.startsWith('Old ') && isOfUse(sheet, { spoken, wanted }),
    )
    .flatMap((sheet) => {
      const cost = unitPrice(prices, sheet);
      if (cost === undefined) return [];
      return placesFor(aboard, sheet).map((place): Offer => {
        const id = `buy-${sheet.id}-${place}`;
        const unit: Kit = { id, name: sheet.name, sheet: sheet.id, fate: 'comes', phase, place };
        return { unit, sheet, cost };
      });
    });
};
