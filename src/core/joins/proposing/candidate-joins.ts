import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Join } from '../../boat/boat-schema.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import { limitValue } from '../../boat/limit-value.ts';
import { nmea0183 } from '../../facts/nmea0183.ts';
import type { StandingJoin } from '../../plan-shape.ts';
import { type PriceList, priceList } from '../../prices/price-list.ts';
import type { PortNetwork, PortNode } from '../../readings/port-network.ts';
import { lineKindOf } from '../../ways/join-lines.ts';
import { makeRouter, type Router } from '../../ways/routes.ts';
import { charsPerSecond, lineLoad } from '../line-load.ts';
import { isMadeFor } from './made-for.ts';
import { freePorts, type Sockets } from './sockets.ts';

type Member = Join['members'][number];

/** A join that could be made: a port put on a bus, or two ports wired to each other. */
export interface CandidateJoin {
  readonly id: string;
  readonly kind: Join['kind'];
  readonly bus?: string;
  readonly members: readonly Member[];
  /** cable, and the tee on a bus; hundredths of the currency */
  readonly cost: number;
  /** what it takes one of */
  readonly takes: readonly string[];
}

/** Joins that could be made, and how many of each thing they take there are. */
export interface Candidates {
  readonly joins: readonly CandidateJoin[];
  readonly room: ReadonlyMap<string, number>;
}

interface Context {
  readonly index: BoatIndex;
  readonly sockets: Sockets;
  readonly router: Router;
  readonly prices: PriceList;
  /** units that would have to be bought */
  readonly offers: ReadonlyMap<string, number>;
}

/** One talker, many listeners. */
const oneToMany: ReadonlySet<Join['kind']> = new Set(['nmea0183', 'single-wire', 'modbus']);
const twoWay: ReadonlySet<Join['kind']> = new Set(['ethernet', 'usb', 'wifi']);

const memberOf = (node: PortNode, as: Member['as']): Member => ({ kit: node.kit, port: node.port.id, as });

const cableCost = ({ prices }: Context, kind: NonNullable<(typeof lineKindOf)[Join['kind']]>, mm: number): number =>
  Math.round(((prices.perM(kind) ?? 0) * mm) / 1000);

const placeOf = ({ index }: Context, kit: string): string => index.kit.get(kit)?.place ?? '';

/** Whether two ports are kept apart by a person: a join of the file that may never be. */
const isForbidden = ({ index }: Context, members: readonly Member[], bus: string | undefined): boolean =>
  index.boat.joins.some(
    (join) =>
      join.hold === 'never' &&
      join.bus === bus &&
      members.every(({ kit, port }) => join.members.some((own) => own.kit === kit && own.port === port)),
  );

/** A 0183 output that says more than its line carries is no use to anybody. */
const saysTooMuch = ({ index }: Context, { port }: PortNode): boolean =>
  port.protocol === 'nmea0183' &&
  lineLoad({ charsPerS: charsPerSecond(port.sends ?? []), baud: port.baud ?? nmea0183.baud.value }).sharePct >
    limitValue(index.boat, 'nmea0183-load');

const onBus = (context: Context, node: PortNode, bus: string): CandidateJoin[] => {
  const { router, sockets, prices, offers } = context;
  const anchors = sockets.placesOn(bus).filter(({ kit }) => kit !== node.kit && !offers.has(kit));
  const from = placeOf(context, node.kit);
  const drops = anchors.flatMap(({ place }) => router.between({ kind: 'drop', from, to: place })?.mm ?? []);
  if (drops.length === 0) return [];
  const members = [memberOf(node, 'both')];
  if (isForbidden(context, members, bus)) return [];
  const cost = prices.tee + cableCost(context, 'drop', Math.min(...drops));
  return [
    { id: `nmea2000:${bus}~${node.id}`, kind: 'nmea2000', bus, members, cost, takes: [`at ${node.id}`, `bus ${bus}`] },
  ];
};

const between = (context: Context, from: PortNode, to: PortNode): CandidateJoin[] => {
  const kind = from.port.protocol;
  if (kind === 'dc' || kind !== to.port.protocol || from.kit === to.kit) return [];
  const both = twoWay.has(kind);
  if (both ? from.id >= to.id : from.port.role === 'listen' || to.port.role === 'talk') return [];
  // two units to buy are only tried side by side: anywhere else one of them would stand better
  const isOffered = context.offers.has(from.kit) && context.offers.has(to.kit);
  if (isOffered && placeOf(context, from.kit) !== placeOf(context, to.kit)) return [];
  if (kind === 'analog' && !isMadeFor(from.port, to.port)) return [];
  const members = [memberOf(from, both ? 'both' : 'talk'), memberOf(to, both ? 'both' : 'listen')];
  if (isForbidden(context, members, undefined) || saysTooMuch(context, from)) return [];
  const { sockets, router } = context;
  const line = lineKindOf[kind];
  const ends = { from: placeOf(context, from.kit), to: placeOf(context, to.kit) };
  const route = line === undefined ? undefined : router.cheapest({ kind: line, ...ends });
  if (line !== undefined && route === undefined) return [];
  const takes = kind === 'wifi' ? [] : [sockets.takenAt(from, 'talk'), sockets.takenAt(to, 'listen')];
  const cost = line === undefined || route === undefined ? 0 : cableCost(context, line, route.mm);
  return [{ id: `${kind}:${from.id}~${to.id}`, kind, members, cost, takes }];
};

/**
 * Every join that could be made between the ports that are free, with the price of its cable, sorted by id: each port on
 * each bus, each talker to each listener of its kind, where a way leads from one to the other, a person has not forbidden
 * it, and a 0183 output does not say more than its line carries. Ports of a switch are alike, so one stands for all.
 * `offers`: units of the index that would have to be bought.
 */
export const candidateJoins = ({
  index,
  network,
  standing,
  offers,
}: {
  readonly index: BoatIndex;
  readonly network: PortNetwork;
  readonly standing: readonly StandingJoin[];
  readonly offers: ReadonlyMap<string, number>;
}): Candidates => {
  const sockets = freePorts(index, network, standing, oneToMany);
  const context: Context = { index, sockets, router: makeRouter(index), prices: priceList(index.boat), offers };
  const buses = [...index.buses.keys()].sort(byCodeUnit);
  const joins = [
    ...sockets.loose.flatMap((node) => buses.flatMap((bus) => onBus(context, node, bus))),
    ...sockets.talkers.flatMap((from) => sockets.listeners.flatMap((to) => between(context, from, to))),
  ].sort((a, b) => byCodeUnit(a.id, b.id));
  return { joins, room: sockets.room };
};
