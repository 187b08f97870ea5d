import type { BoatIndex } from '../boat/boat-index.ts';
import type { Port, Sends, Sheet } from '../boat/sheet.ts';
import { readingsOfPgn } from '../facts/message-readings.ts';
import { pgnInfo } from '../facts/pgns.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import type { StandingJoin } from '../plan-shape.ts';

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

const messageOf = (sent: Sends, numbers: Numbers): readonly BusMessage[] => {
  const { pgn } = sent;
  if (pgn === undefined) return [];
  const info = pgnInfo(pgn);
  const everyMs = sent.everyMs ?? info?.everyMs;
  if (everyMs === undefined) return [];
  const { frames = 1, planBytes: dataBytes = 8, priority = assumedPriority } = info ?? {};
  return [{ pgn, count: messagesOf(sent, pgn, numbers), frames, dataBytes, everyMs, priority }];
};

/** Two ports in line are one place on the bus: what both list is sent once. */
const isSaidBefore = (sheet: Sheet, port: Port, joined: ReadonlySet<string>): boolean =>
  sheet.inLine?.[1] === port.id && joined.has(sheet.inLine[0]);

/**
 * What the joined ports of one bus send of themselves, with the interval of the sheet, else the usual one of the message.
 * What comes only on event, request or with other ships' traffic is not in it. `joins` are those that stand. Pure.
 */
export const busMessages = (index: BoatIndex, busId: string, joins: readonly StandingJoin[]): readonly BusMessage[] => {
  const members = joins.filter((join) => join.bus === busId).flatMap((join) => join.members);
  const portsOf = new Map<string, Set<string>>();
  for (const { kit, port, as } of members)
    if (as !== 'listen') portsOf.set(kit, (portsOf.get(kit) ?? new Set()).add(port));

  return [...portsOf].flatMap(([kit, joined]) => {
    const sheet = index.sheetOf.get(kit);
    return (sheet?.ports ?? []).flatMap((port) => {
      if (sheet === undefined || !joined.has(port.id) || isSaidBefore(sheet, port, joined)) return [];
      const numbers = numbersAt(index, kit, port, sheet);
      return (port.sends ?? []).flatMap((sent) => messageOf(sent, numbers));
    });
  });
};
