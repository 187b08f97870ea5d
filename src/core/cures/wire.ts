import type { EditCall } from '../boat/history.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { Port } from '../boat/sheet.ts';
import { shortName } from '../boat/short-name.ts';
import { isMadeFor } from '../joins/proposing/made-for.ts';
import { metreItem } from '../prices/price-list.ts';
import type { PortNode } from '../readings/port-network.ts';
import { lineKindOf } from '../ways/join-lines.ts';
import { sumOf } from './candidate.ts';
import type { CureContext } from './cure-context.ts';

/** A port that a wire could lead to: one aboard, or one of a unit that is not aboard yet. */
export interface Socket {
  /** `kit.port` */
  readonly id: string;
  readonly port: Port;
  /** the port in words, and its unit */
  readonly words: string;
  readonly unit: string;
  readonly place: string;
  /** the bus it is on */
  readonly bus: string | undefined;
  /** whether a join other than a bus already holds it, and whether it listens there */
  readonly isJoined: boolean;
  readonly isListening: boolean;
}

/** The edits that wire two ports, in words, with the price of the cable. */
export interface Wire {
  readonly edits: readonly EditCall[];
  readonly says: string;
  /** hundredths; absent where a metre has no price */
  readonly cost: number | undefined;
}

/** A port aboard as something to lead a wire to. */
export const socketOf = ({ index, busOf, wired }: CureContext, { id, kit, port }: PortNode): Socket => {
  const unit = index.kit.get(kit);
  const name = shortName(unit?.name ?? kit);
  return {
    id,
    port,
    words: `port ${port.id} of ${name}`,
    unit: name,
    place: unit?.place ?? '',
    bus: busOf.get(id),
    isJoined: wired.has(id),
    isListening: wired.get(id)?.listens === true,
  };
};

/** Kinds of join in which one talker may have many listeners. */
const oneToMany: ReadonlySet<string> = new Set(['nmea0183', 'single-wire', 'modbus']);

const cable = (lengthMm: number, perM: number | undefined): number | undefined =>
  perM === undefined ? undefined : Math.round((lengthMm * perM) / 1000);

/** A tee, and a drop from the nearest unit that is on the bus; undefined where no way leads there. */
const onBus = (context: CureContext, { id, unit, place }: Socket, bus: string): Wire | undefined => {
  const routes = (context.placesOn.get(bus) ?? []).flatMap(
    (to) => context.router.between({ kind: 'drop', from: place, to })?.mm ?? [],
  );
  if (routes.length === 0) return undefined;
  return {
    edits: [{ edit: 'join-bus', params: { port: id, bus } }],
    says: `put ${unit} on ${context.index.buses.get(bus)?.name ?? bus}`,
    cost: sumOf([context.prices.tee, cable(Math.min(...routes), context.prices.perM('drop'))]),
  };
};

const alongBus = (context: CureContext, from: Socket, to: Socket): Wire | undefined => {
  if (from.bus !== undefined && to.bus !== undefined) return undefined;
  if (to.bus !== undefined) return onBus(context, from, to.bus);
  if (from.bus !== undefined) return onBus(context, to, from.bus);
  const [bus] = [...context.placesOn.keys()].sort(byCodeUnit);
  const [one, other] = bus === undefined ? [] : [onBus(context, from, bus), onBus(context, to, bus)];
  if (one === undefined || other === undefined) return undefined;
  return {
    edits: [...one.edits, ...other.edits],
    says: `${one.says} and ${other.says}`,
    cost: sumOf([one.cost, other.cost]),
  };
};

const isFree = (from: Socket, to: Socket): boolean => {
  const { protocol } = from.port;
  if (protocol === 'wifi') return true;
  return oneToMany.has(protocol) ? !to.isListening : !from.isJoined && !to.isJoined;
};

/**
 * What wires a port that talks to a port that listens. Undefined where they are of two kinds, the listener is taken, or
 * no way leads from one to the other.
 */
export const wire = (context: CureContext, from: Socket, to: Socket): Wire | undefined => {
  if (from.port.protocol !== to.port.protocol || from.port.role === 'listen' || to.port.role === 'talk')
    return undefined;
  if (from.port.protocol === 'dc') return undefined;
  if (from.port.protocol === 'nmea2000') return alongBus(context, from, to);
  if (!isFree(from, to)) return undefined;
  if (from.port.protocol === 'analog' && !isMadeFor(from.port, to.port)) return undefined;
  const edits: EditCall[] = [{ edit: 'join-ports', params: { from: from.id, to: to.id } }];
  const says = `join ${from.words} to ${to.words}`;
  const kind = lineKindOf[from.port.protocol];
  if (kind === undefined) return { edits, says, cost: 0 };
  const route = context.router.cheapest({ kind, from: from.place, to: to.place });
  if (route === undefined) return undefined;
  const perM = context.prices.known(kind, metreItem({ kind }), context.prices.perM(kind));
  return { edits, says, cost: cable(route.mm, perM) };
};
