import type { BoatIndex } from '../boat/boat-index.ts';
import type { Port, Sends, Sheet } from '../boat/sheet.ts';
import { readingsOfPgn } from '../facts/message-readings.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import type { StandingJoin } from '../plan-shape.ts';
import { messageOf, type SentMessage } from './bus-messages.ts';

/** One port on a bus and all it puts there again and again. */
export interface BusSender {
  /** `kit.port` */
  readonly port: string;
  readonly messages: readonly SentMessage[];
}

interface Asked {
  readonly index: BoatIndex;
  readonly joins: readonly StandingJoin[];
  /** units that are being asked already: what they pass on is not passed back through them */
  readonly bridges: ReadonlySet<string>;
}

/** Ports that may talk on a bus, by unit. */
const portsOnBus = (joins: readonly StandingJoin[], busId: string): ReadonlyMap<string, ReadonlySet<string>> => {
  const ports = new Map<string, Set<string>>();
  for (const { kit, port, as } of joins.filter((join) => join.bus === busId).flatMap((join) => join.members))
    if (as !== 'listen') ports.set(kit, (ports.get(kit) ?? new Set()).add(port));
  return ports;
};

/** Two ports in line are one place on the bus: what both list is sent once. */
const isSaidBefore = (sheet: Sheet, port: Port, joined: ReadonlySet<string>): boolean =>
  sheet.inLine?.[1] === port.id && joined.has(sheet.inLine[0]);

interface Turned {
  /** a port of the same unit on another bus, from which messages are passed on, and the readings they may carry */
  readonly from: Port;
  readonly readings: ReadonlySet<ReadingId>;
}

/** What a unit passes on to a port from ports on another bus. */
const bridged = (sheet: Sheet, to: Port): readonly Turned[] =>
  (sheet.turns ?? []).flatMap(({ fromPort, toPort, carries }) => {
    const from = sheet.ports.find(({ id }) => id === fromPort);
    return toPort !== to.id || from?.protocol !== 'nmea2000'
      ? []
      : [{ from, readings: new Set(carries.map(({ reading }) => reading)) }];
  });

const carriesAny = (pgn: number, readings: ReadonlySet<ReadingId>): boolean =>
  readingsOfPgn(pgn).some(({ reading }) => readings.has(reading));

/** Whether a message leaves a port only where a bridge passes it on: nothing else in the unit could say it. */
const isOnlyPassed = (sheet: Sheet, port: Port, sent: Sends, turned: readonly Turned[]): boolean => {
  const { pgn } = sent;
  if (pgn === undefined || !turned.some(({ readings }) => carriesAny(pgn, readings))) return false;
  const others = (sheet.turns ?? []).filter(
    ({ fromPort, toPort }) => toPort === port.id && !turned.some(({ from }) => from.id === fromPort),
  );
  return !carriesAny(pgn, new Set(others.flatMap(({ carries }) => carries.map(({ reading }) => reading))));
};

/** Messages of another bus that a bridge repeats at a port, as often as they come there, or as seldom as the port sends them. */
const passedOn = (asked: Asked, kit: string, port: Port, turned: readonly Turned[]): readonly SentMessage[] => {
  const sends = new Map((port.sends ?? []).flatMap((sent) => (sent.pgn === undefined ? [] : [[sent.pgn, sent]])));
  const bridges = new Set([...asked.bridges, kit]);
  return turned.flatMap(({ from, readings }) => {
    const hears = from.hears === undefined ? undefined : new Set(from.hears.map(({ pgn }) => pgn));
    const buses = asked.joins.flatMap(({ bus, members }) =>
      bus !== undefined && members.some((member) => member.kit === kit && member.port === from.id) ? [bus] : [],
    );
    return [...new Set(buses)].flatMap((bus) =>
      sendersOf({ ...asked, bridges }, bus).flatMap((sender) =>
        sender.messages.flatMap((message) => {
          const sent = sends.get(message.pgn);
          const isTaken = hears === undefined || hears.has(message.pgn);
          if (sent === undefined || !isTaken || !carriesAny(message.pgn, readings)) return [];
          const everyMs = Math.max(message.everyMs, sent.everyMs ?? 0);
          return [{ ...message, everyMs, rate: 'passed' as const, from: message.from ?? sender.port }];
        }),
      ),
    );
  });
};

const sendersOf = (asked: Asked, busId: string): readonly BusSender[] => {
  const { index, joins, bridges } = asked;
  return [...portsOnBus(joins, busId)].flatMap(([kit, joined]) => {
    const sheet = index.sheetOf.get(kit);
    if (sheet === undefined || bridges.has(kit)) return [];
    return sheet.ports.flatMap((port) => {
      if (!joined.has(port.id) || isSaidBefore(sheet, port, joined)) return [];
      const turned = bridged(sheet, port);
      const own = (port.sends ?? []).filter((sent) => !isOnlyPassed(sheet, port, sent, turned));
      const messages = [
        ...own.flatMap((sent) => messageOf({ index, kit, sheet, port }, sent)),
        ...passedOn(asked, kit, port, turned),
      ];
      return [{ port: `${kit}.${port.id}`, messages }];
    });
  });
};

/**
 * What every joined port of one bus puts on it again and again, with the interval of the sheet, else the usual one of the
 * message; other ships' reports as the waters of the boat bring them. A bridge repeats what it hears on the other bus and
 * may send. What comes only on event or request is not in it. `joins` are those that stand. Pure.
 */
export const busSenders = (index: BoatIndex, busId: string, joins: readonly StandingJoin[]): readonly BusSender[] =>
  sendersOf({ index, joins, bridges: new Set() }, busId);
