import type { BoatIndex } from '../boat/boat-index.ts';
import type { Writes } from '../boat/remote.ts';
import type { Protocol } from '../boat/sheet.ts';
import { convertingKinds, type RemoteOrder } from '../facts/remote-figures.ts';
import type { PortNode } from '../readings/port-network.ts';
import type { RemoteCommand } from '../remote-shape.ts';

const networkSide: ReadonlySet<Protocol> = new Set(['wifi', 'ethernet', 'usb']);
const boatSide: ReadonlySet<Protocol> = new Set(['nmea2000', 'nmea0183', 'single-wire', 'engine-can', 'modbus']);

/** Whether a port is on the side of phones and computers, where anything can be sent. */
export const isNetworkSide = ({ port }: PortNode): boolean => networkSide.has(port.protocol);

/** Whether a port is on a bus or line of the boat, where only known messages count. */
export const isBoatSide = ({ port }: PortNode): boolean => boatSide.has(port.protocol);

/** What is known of a unit’s writing: what its owner says, else its sheet. */
export const writesOf = (index: BoatIndex, kit: string): Writes => {
  const own = index.kit.get(kit)?.remote?.writes ?? 'unknown';
  return own === 'unknown' ? (index.sheetOf.get(kit)?.remote?.writes ?? 'unknown') : own;
};

/** Whether a unit passes on whatever comes in, unless it is set not to. */
export const isConverter = (index: BoatIndex, kit: string): boolean =>
  convertingKinds.has(index.sheetOf.get(kit)?.kind ?? '');

/** Whether a port understands an order. */
export const takesOrder = (node: PortNode, { reading, pgn }: RemoteOrder): boolean =>
  pgn === undefined
    ? node.hears.has(reading)
    : (node.port.hears ?? []).some((entry) => entry.pgn === pgn || entry.reading === reading);

/** Whether a port sends an order of itself, or for a turn. */
export const givesOrder = (node: PortNode, { reading, pgn }: RemoteOrder): boolean =>
  pgn === undefined
    ? node.gives.has(reading)
    : (node.port.sends ?? []).some((entry) => entry.pgn === pgn || entry.reading === reading);

/** What a converter is taken for between its network side and one port of its boat side. */
export const gateWrites = (index: BoatIndex, to: PortNode): Writes => {
  const writes = writesOf(index, to.kit);
  // Whoever says that it writes has seen it; a port that only listens writes nothing else.
  return writes === 'unknown' && to.port.role === 'listen' ? 'listen-only' : writes;
};

/**
 * How an order that has come to the network side of a unit, at `from`, gets out at a port of its boat side; undefined where
 * it does not. By a turn its sheet says so; a converter passes on whatever comes; any other unit sends what it can send
 * itself, once somebody works it from afar.
 */
export const crossing = (
  index: BoatIndex,
  { from, to, order }: { from: PortNode | undefined; to: PortNode; order: RemoteOrder },
): RemoteCommand['known'] | undefined => {
  const writes = gateWrites(index, to);
  if (writes === 'listen-only' || !isBoatSide(to)) return undefined;
  const isTurned = (from?.turnsFrom ?? []).some(
    ({ turn, to: end }) => end === to && turn.carries.some(({ reading }) => reading === order.reading),
  );
  if (isTurned || from?.group.includes(to) === true) return 'said';
  const passes = isConverter(index, to.kit);
  if (!passes && !givesOrder(to, order)) return undefined;
  if (writes === 'may-write') return 'said';
  return passes ? 'taken' : 'perhaps';
};
