import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildCanId, splitCanId } from './can-id.ts';

const source = 'CANboat PGN database 6.2.0, packet framing section';

describe(`identifier of a frame (${source})`, () => {
  test.each([
    ['MS-01', 0x09f8012b, { priority: 2, pgn: 129_025, destination: 255, source: 43 }],
    ['MS-02', 0x18eeff01, { priority: 6, pgn: 60_928, destination: 255, source: 1 }],
    ['MS-03', 0x0ded2301, { priority: 3, pgn: 126_208, destination: 35, source: 1 }],
    ['MS-04', 0x1defffcc, { priority: 7, pgn: 126_720, destination: 255, source: 204 }],
    ['MS-05', 0x15fd0723, { priority: 5, pgn: 130_311, destination: 255, source: 35 }],
    ['MS-07', 0x09f112cc, { priority: 2, pgn: 127_250, destination: 255, source: 204 }],
  ])('%s is taken apart', (_id, canId, expected) => {
    expect(splitCanId(canId)).toEqual(expected);
  });

  test.each([
    ['MS-09', 0x0df80517, { priority: 3, pgn: 129_029, destination: 255, source: 23 }],
    ['MS-10', 0x18ea0e25, { priority: 6, pgn: 59_904, destination: 14, source: 37 }],
    ['MS-12', 0x09fd0207, { priority: 2, pgn: 130_306, destination: 255, source: 7 }],
  ])('%s is put together', (_id, expected, parts) => {
    expect(buildCanId(parts)).toBe(expected);
  });

  test('MS-13: of frames queued at the same instant the lowest identifier goes first (ISO 11898-1)', () => {
    const parts = [
      { priority: 2, pgn: 127_250, destination: 255, source: 4 },
      { priority: 2, pgn: 127_250, destination: 255, source: 5 },
      { priority: 2, pgn: 129_025, destination: 255, source: 5 },
      { priority: 3, pgn: 129_029, destination: 255, source: 1 },
      { priority: 6, pgn: 60_928, destination: 255, source: 0 },
    ];
    const ids = parts.map(buildCanId);
    expect([...ids].sort((a, b) => a - b)).toEqual(ids);
    expect(ids).toEqual([0x09f11204, 0x09f11205, 0x09f80105, 0x0df80501, 0x18eeff00]);
  });

  test('every identifier of 29 bits comes back the same after being taken apart', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0x1fff_ffff }), (id) => {
        expect(buildCanId(splitCanId(id))).toBe(id);
      }),
    );
  });
});
