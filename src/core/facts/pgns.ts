import { pgnRows } from './generated/pgns.ts';
import type { SourceKey } from './sources.ts';

/** One message of the bus, as planned for when no recording says better. */
export interface PgnInfo {
  readonly pgn: number;
  readonly name: string;
  readonly packet: 'single' | 'fast' | 'transport';
  /** length planned with: fixed, else typical, else the least; a plan value, never a validity rule */
  readonly planBytes: number;
  /** frames of a message of planBytes */
  readonly frames: number;
  /** default interval; absent = on event or request, or unknown */
  readonly everyMs?: number;
  /** 0 wins over all others; absent = not stated */
  readonly priority?: number;
  readonly source: SourceKey;
}

/** Messages of variable length that are planned longer than their least. */
const typicalBytes: ReadonlyMap<number, number> = new Map([
  [126_208, 20],
  [126_998, 6],
  [127_503, 20],
  [127_504, 20],
  [129_041, 48],
  [129_285, 39],
  [129_540, 147],
]);

/** Priorities the database leaves out. */
const tablePriority: ReadonlyMap<number, number> = new Map([
  [60_160, 6],
  [60_416, 6],
  [65_240, 6],
  [126_208, 3],
  [126_464, 6],
]);

const packetOf = { s: 'single', f: 'fast', t: 'transport' } as const;

const framesOf = (packet: PgnInfo['packet'], bytes: number): number => {
  switch (packet) {
    case 'single':
      return 1;
    case 'fast':
      return bytes <= 6 ? 1 : 1 + Math.ceil((bytes - 6) / 7);
    case 'transport':
      return 1 + Math.ceil(bytes / 7);
  }
};

const infoOf = ([pgn, letter, bytes, everyMs, stated, name]: (typeof pgnRows)[number]): PgnInfo => {
  const packet = packetOf[letter];
  const planBytes = typicalBytes.get(pgn) ?? bytes;
  const priority = stated >= 0 ? stated : tablePriority.get(pgn);
  return {
    pgn,
    name,
    packet,
    planBytes,
    frames: framesOf(packet, planBytes),
    ...(everyMs > 0 ? { everyMs } : {}),
    ...(priority === undefined ? {} : { priority }),
    source: typicalBytes.has(pgn) ? 'pgn-typical-length' : 'pgn-database',
  };
};

const table: ReadonlyMap<number, PgnInfo> = new Map(pgnRows.map((row) => [row[0], infoOf(row)]));

const makerSpecificFast = (pgn: number): boolean => pgn === 126_720 || (pgn >= 130_816 && pgn <= 131_071);
const makerSpecificSingle = (pgn: number): boolean => pgn === 61_184 || (pgn >= 65_280 && pgn <= 65_535);

/** Length planned for a maker's own fast packet, which nothing public states: three frames. */
const makerFastBytes = 20;

/**
 * What is known of a message, or undefined when its number is in no table and no maker-specific range.
 *
 * @example pgnInfo(129029) // { name: 'GNSS Position Data', packet: 'fast', planBytes: 43, frames: 7, everyMs: 1000, … }
 */
export const pgnInfo = (pgn: number): PgnInfo | undefined => {
  const known = table.get(pgn);
  if (known !== undefined) return known;
  const base = { pgn, name: "maker's own message", source: 'pgn-maker-range' } as const;
  if (makerSpecificSingle(pgn)) return { ...base, packet: 'single', planBytes: 8, frames: 1 };
  if (!makerSpecificFast(pgn)) return undefined;
  return { ...base, packet: 'fast', planBytes: makerFastBytes, frames: framesOf('fast', makerFastBytes) };
};

/** Whether a message travels as fast packet: cut into frames of 6 and then 7 bytes, at most 223 bytes. */
export const isFastPacket = (pgn: number): boolean => makerSpecificFast(pgn) || table.get(pgn)?.packet === 'fast';

/** Whether a message number is free for makers to use as they like. */
export const isMakersOwn = (pgn: number): boolean => makerSpecificFast(pgn) || makerSpecificSingle(pgn);

/** Every message of the bus that a table knows, by number. */
export const knownPgns = (): readonly PgnInfo[] => [...table.values()].sort((a, b) => a.pgn - b.pgn);
