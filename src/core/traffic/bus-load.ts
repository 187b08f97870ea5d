import type { BoatIndex } from '../boat/boat-index.ts';
import type { Port, Sends, Sheet } from '../boat/sheet.ts';
import { readingsOfPgn } from '../facts/message-readings.ts';
import { pgnInfo } from '../facts/pgns.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import type { StandingJoin } from '../plan-shape.ts';
import { messageLoadPct } from './message-load.ts';

/** How full a bus is by what its members send of themselves, %. */
export interface BusLoad {
  /** as measured against the worst case on real buses */
  readonly averagePct: number;
  /** every frame with as many stuff bits as it can have */
  readonly worstPct: number;
}

/** Exact frame bits over worst-case bits on a full bus. Source: computed-expected-load. */
const exactOverWorst = 0.886;

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

const sentLoadPct = (sent: Sends, numbers: Numbers): number => {
  if (sent.pgn === undefined) return 0;
  const info = pgnInfo(sent.pgn);
  const everyMs = sent.everyMs ?? info?.everyMs;
  if (everyMs === undefined) return 0;
  const { frames = 1, planBytes: dataBytes = 8 } = info ?? {};
  return messagesOf(sent, sent.pgn, numbers) * messageLoadPct({ frames, dataBytes, everyMs });
};

/** Two ports in line are one place on the bus: what both list is sent once. */
const isSaidBefore = (sheet: Sheet, port: Port, joined: ReadonlySet<string>): boolean =>
  sheet.inLine?.[1] === port.id && joined.has(sheet.inLine[0]);

/**
 * Load of one bus from what its joined ports send, with the interval of the sheet, else the usual one of the message.
 * What comes only on event, request or with other ships' traffic is not in it. `joins` are those that stand. Pure.
 */
export const busLoad = (index: BoatIndex, busId: string, joins: readonly StandingJoin[]): BusLoad => {
  const members = joins.filter((join) => join.bus === busId).flatMap((join) => join.members);
  const portsOf = new Map<string, Set<string>>();
  for (const { kit, port, as } of members)
    if (as !== 'listen') portsOf.set(kit, (portsOf.get(kit) ?? new Set()).add(port));

  const loads = [...portsOf].flatMap(([kit, joined]) => {
    const sheet = index.sheetOf.get(kit);
    return (sheet?.ports ?? []).flatMap((port) => {
      if (sheet === undefined || !joined.has(port.id) || isSaidBefore(sheet, port, joined)) return [];
      const numbers = numbersAt(index, kit, port, sheet);
      return (port.sends ?? []).map((sent) => sentLoadPct(sent, numbers));
    });
  });
  // Smallest first, so that the order of the file cannot move the last digit.
  const worstPct = loads.sort((a, b) => a - b).reduce((sum, load) => sum + load, 0);
  return { worstPct, averagePct: exactOverWorst * worstPct };
};
