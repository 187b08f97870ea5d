import type { BoatIndex } from '../boat/boat-index.ts';
import type { Port, Sends, Sheet } from '../boat/sheet.ts';
import { readingsOfPgn } from '../facts/message-readings.ts';
import { pgnInfo } from '../facts/pgns.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import { shipMessagesPerS } from '../facts/waters.ts';
import { rateOf, type SaidRate } from './said-rate.ts';
import { shipsOnBoat } from './ships-on-boat.ts';

/** What one entry of a sheet puts on the bus again and again. */
export interface BusMessage {
  readonly pgn: number;
  /** like messages of the entry: one for each tank, engine or battery */
  readonly count: number;
  readonly frames: number;
  readonly dataBytes: number;
  readonly everyMs: number;
  /** 0 wins over all others */
  readonly priority: number;
}

/** A message with who says how often it comes. */
export interface SentMessage extends BusMessage {
  readonly rate: SaidRate;
  /** of a message passed on from another bus: the port that sends it there, `kit.port` */
  readonly from?: string;
}

/** Of a message whose priority nothing public states: the usual one of what is not urgent. */
const assumedPriority = 6;

/** The numbers of a reading at a port: the unit's own, else those its turns give. */
type Numbers = readonly { readonly reading: ReadingId; readonly instance: number }[];

const numbersAt = (index: BoatIndex, kit: string, port: Port, sheet: Sheet): Numbers => {
  const own = (index.kit.get(kit)?.instances ?? []).filter((entry) => entry.port === port.id);
  const turned = (sheet.turns ?? [])
    .filter((turn) => turn.toPort === port.id)
    .flatMap((turn) => turn.carries)
    .flatMap(({ reading, asInstance }) =>
      asInstance === undefined || own.some((entry) => entry.reading === reading)
        ? []
        : [{ reading, instance: asInstance }],
    );
  return [...own, ...turned];
};

/** Messages that one entry of `sends` stands for: one for each tank, engine or battery it gives. */
const messagesOf = (sent: Sends, pgn: number, numbers: Numbers): number => {
  if (sent.instance !== undefined) return 1;
  const given = readingsOfPgn(pgn);
  const different = numbers.flatMap(({ reading, instance }) => {
    const entry = given.find((said) => said.reading === reading);
    if (entry === undefined) return [];
    // Fuel 0 and water 0 are two messages; temperature 0 and pressure 0 travel in one.
    return [entry.oneOf === true ? `${reading} ${instance}` : String(instance)];
  });
  return Math.max(1, new Set(different).size);
};

type Often = Pick<SentMessage, 'count' | 'everyMs' | 'rate'>;

/** Other ships’ reports: those of one second are taken to come all at once, as they do in a full harbour. */
const asShipsBring = (perS: number): Often => {
  const count = Math.ceil(perS);
  return { count, everyMs: (1000 * count) / perS, rate: 'waters' };
};

interface PortOnBoat {
  readonly index: BoatIndex;
  readonly kit: string;
  readonly sheet: Sheet;
  readonly port: Port;
}

/** How often a message comes: as the sheet says, else as usual, else as the waters bring it; undefined where only an event sends it. */
const oftenOf = ({ index, kit, port, sheet }: PortOnBoat, sent: Sends, pgn: number): Often | undefined => {
  const usualMs = pgnInfo(pgn)?.everyMs;
  const everyMs = sent.everyMs ?? usualMs;
  if (everyMs !== undefined) {
    const count = messagesOf(sent, pgn, numbersAt(index, kit, port, sheet));
    return { count, everyMs, rate: rateOf({ unit: index.kit.get(kit), port: port.id, sent }) };
  }
  const perS = shipMessagesPerS(pgn, shipsOnBoat(index.boat));
  return perS === undefined ? undefined : asShipsBring(perS);
};

/** What one entry of `sends` puts on the bus; nothing for a bare reading, or what only an event or a request sends. */
export const messageOf = (at: PortOnBoat, sent: Sends): readonly SentMessage[] => {
  const { pgn } = sent;
  const often = pgn === undefined ? undefined : oftenOf(at, sent, pgn);
  if (pgn === undefined || often === undefined) return [];
  const { frames = 1, planBytes: dataBytes = 8, priority = assumedPriority } = pgnInfo(pgn) ?? {};
  return [{ pgn, frames, dataBytes, priority, ...often }];
};
