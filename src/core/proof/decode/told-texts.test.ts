import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { littleEndian } from '../../../../tests/recordings/payloads.ts';
import { readConfigurationInformation } from './configuration-information.ts';
import { readCountedText } from './counted-text.ts';
import { paddedText } from './padded-text.ts';
import { readPgnList } from './pgn-list.ts';
import { readRouteInformation } from './route-information.ts';

const counted = (text: string): (readonly [number, number])[] => [
  [text.length + 2, 1],
  [1, 1],
  ...Array.from(text, (char) => [char.codePointAt(0) ?? 0, 1] as const),
];

describe('texts and lists that a device tells of itself', () => {
  test('configuration information is three texts, of which any may be empty', () => {
    const payload = littleEndian(...counted('Mast foot'), ...counted(''), ...counted('Any maker'));
    expect(readConfigurationInformation(payload)).toEqual({ installation1: 'Mast foot', maker: 'Any maker' });
    expect(readConfigurationInformation(payload.subarray(0, 12))).toEqual({ installation1: 'Mast foot' });
    expect(readConfigurationInformation(new Uint8Array(0))).toEqual({});
  });

  test('a text of two bytes a character is read too; one longer than its message is none', () => {
    expect(readCountedText(littleEndian([6, 1], [0, 1], [0x0416, 2], [0x41, 2]), 0)).toEqual({ text: 'ЖA', end: 6 });
    expect(readCountedText(Uint8Array.of(9, 1, 65), 0)).toBeUndefined();
    expect(readCountedText(Uint8Array.of(1, 1), 0)).toBeUndefined();
    expect(readCountedText(Uint8Array.of(4, 7, 65, 66), 0)).toBeUndefined();
  });

  test('a text of fixed room ends at its padding', () => {
    expect(paddedText(Uint8Array.from([0x41, 0x42, 0xff, 0x43]))).toBe('AB');
    expect(paddedText(Uint8Array.from([0x40, 0x40, 0x20]))).toBeUndefined();
  });

  test('the messages a device sends and takes are a list of numbers, each once', () => {
    const list = littleEndian([0, 1], [127_250, 3], [60_928, 3], [127_250, 3], [0xff_ffff, 3], [0xff, 1]);
    expect(readPgnList(list)).toEqual({ direction: 'sends', pgns: [60_928, 127_250] });
    expect(readPgnList(littleEndian([1, 1], [129_025, 3]))).toEqual({ direction: 'receives', pgns: [129_025] });
    expect([readPgnList(Uint8Array.of(7)), readPgnList(new Uint8Array(0))]).toEqual([undefined, undefined]);
  });

  test('a route has its waypoints with names and places; what was cut off is not invented', () => {
    const point = (id: number, name: string, lat: number, lon: number) =>
      [[id, 2], ...counted(name), [lat * 1e7, 4], [2 ** 32 + lon * 1e7, 4]] as const;
    const head = [
      [0, 2],
      [2, 2],
      [0xffff, 2],
      [7, 2],
      [0, 1],
    ] as const;
    const payload = littleEndian(
      ...head,
      ...counted('Home'),
      [0xff, 1],
      ...point(1, 'A', 54.25, -10.5),
      ...point(2, 'B', 54.5, -10.75),
    );
    const route = readRouteInformation(payload);
    expect(route).toMatchObject({ routeId: 7, name: 'Home', announced: 2 });
    expect(route?.waypoints).toEqual([
      { id: 1, name: 'A', latitude: expect.closeTo(54.25, 7), longitude: expect.closeTo(-10.5, 7) },
      { id: 2, name: 'B', latitude: expect.closeTo(54.5, 7), longitude: expect.closeTo(-10.75, 7) },
    ]);
    expect(readRouteInformation(payload.subarray(0, payload.length - 3))?.waypoints).toHaveLength(1);
    expect(readRouteInformation(new Uint8Array(6))).toBeUndefined();
  });

  test('bytes of any kind break none of them', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 223 }), (bytes) => {
        readConfigurationInformation(bytes);
        readPgnList(bytes);
        expect(readRouteInformation(bytes)?.waypoints.length ?? 0).toBeLessThanOrEqual(64);
      }),
    );
  });
});
