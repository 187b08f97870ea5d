import { describe, expect, test } from 'vitest';
import { pgnRows } from './generated/pgns.ts';
import { isFastPacket, isMakersOwn, pgnInfo } from './pgns.ts';

describe('messages of the bus', () => {
  test.each([
    { pgn: 129_025, packet: 'single', planBytes: 8, frames: 1, everyMs: 100, priority: 2 },
    { pgn: 129_029, packet: 'fast', planBytes: 43, frames: 7, everyMs: 1000, priority: 3 },
    { pgn: 129_540, packet: 'fast', planBytes: 147, frames: 22, everyMs: 1000, priority: 6 },
    { pgn: 127_489, packet: 'fast', planBytes: 26, frames: 4, everyMs: 500, priority: 2 },
    { pgn: 127_237, packet: 'fast', planBytes: 21, frames: 4, everyMs: 250, priority: 2 },
    { pgn: 127_503, packet: 'fast', planBytes: 20, frames: 3, everyMs: 1500, priority: 6 },
    { pgn: 127_507, packet: 'fast', planBytes: 6, frames: 1, everyMs: 1500, priority: 6 },
    { pgn: 130_578, packet: 'fast', planBytes: 12, frames: 2, everyMs: 250, priority: 2 },
  ] as const)('PGN $pgn is planned as the message table has it', (row) => {
    expect(pgnInfo(row.pgn)).toMatchObject(row);
  });

  test.each([
    { pgn: 126_996, packet: 'fast', planBytes: 134, frames: 20, priority: 6 },
    { pgn: 126_208, packet: 'fast', planBytes: 20, frames: 3, priority: 3 },
    { pgn: 126_464, packet: 'fast', planBytes: 1, frames: 1, priority: 6 },
    { pgn: 129_038, packet: 'fast', planBytes: 28, frames: 5, priority: 4 },
    { pgn: 129_285, packet: 'fast', planBytes: 39, frames: 6, priority: 6 },
    { pgn: 65_240, packet: 'transport', planBytes: 9, frames: 3, priority: 6 },
    { pgn: 59_904, packet: 'single', planBytes: 3, frames: 1, priority: 6 },
  ] as const)('PGN $pgn comes on event or request and so has no interval', (row) => {
    expect(pgnInfo(row.pgn)).toMatchObject(row);
    expect(pgnInfo(row.pgn)).not.toHaveProperty('everyMs');
  });

  test('makers keep their own numbers: 61184 and 65280 to 65535 in one frame, 126720 and from 130816 as fast packet', () => {
    for (const pgn of [61_184, 65_280, 65_535]) expect([isMakersOwn(pgn), isFastPacket(pgn)]).toEqual([true, false]);
    for (const pgn of [126_720, 130_816, 131_071]) expect([isMakersOwn(pgn), isFastPacket(pgn)]).toEqual([true, true]);
    for (const pgn of [65_279, 126_721, 130_815]) expect(isMakersOwn(pgn)).toBe(false);
    expect(pgnInfo(130_822)).toMatchObject({ packet: 'fast', planBytes: 20, frames: 3 });
  });

  test('a number in no table is unknown, not guessed', () => {
    expect(pgnInfo(126_721)).toBeUndefined();
    expect(isFastPacket(126_721)).toBe(false);
  });

  test('every planned length fits its packet', () => {
    for (const [pgn] of pgnRows) {
      const info = pgnInfo(pgn);
      const most = { single: 8, fast: 223, transport: 1785 };
      expect(info?.planBytes ?? -1).toBeLessThanOrEqual(info === undefined ? -2 : most[info.packet]);
      expect(info?.frames).toBeGreaterThanOrEqual(1);
    }
  });
});
