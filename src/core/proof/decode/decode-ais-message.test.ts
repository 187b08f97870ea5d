import { FromPgn } from '@canboat/canboatjs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { littleEndian } from '../../../../tests/recordings/payloads.ts';
import { decodeAisMessage, isAisPgn } from './decode-ais-message.ts';

const text = (value: string, bytes: number): (readonly [number, number])[] =>
  Array.from(value.padEnd(bytes, '@'), (char) => [char.codePointAt(0) ?? 64, 1] as const);

const mmsi = 123_456_789;
const size = [
  [100, 2],
  [30, 2],
  [12, 2],
  [40, 2],
] as const;

describe('what ships say, in messages of the bus', () => {
  test('a position of class A, with the own ship told by its transceiver', () => {
    const place = [
      [-105_000_000 + 2 ** 32, 4],
      [542_500_000, 4],
      [0xfc, 1],
      [36_878, 2],
      [329, 2],
    ] as const;
    const tail = [
      [0xffff, 2],
      [0x7fff, 2],
      [0xf5, 1],
      [0xff, 1],
      [0xff, 1],
    ] as const;
    const payload = littleEndian([1, 1], [mmsi, 4], ...place, [0, 2], [0, 1], ...tail);
    expect(decodeAisMessage(129_038, payload)).toEqual({
      type: 1,
      mmsi,
      own: false,
      longitude: expect.closeTo(-10.5, 9),
      latitude: expect.closeTo(54.25, 9),
      course: expect.closeTo(3.6878, 9),
      speed: expect.closeTo(3.29, 9),
      status: 5,
    });
    payload[20] = 4 << 3;
    expect(decodeAisMessage(129_038, payload)?.own).toBe(true);
  });

  test('static parts: name, call sign, type and size; padding and zeros say nothing', () => {
    const voyage = littleEndian(
      [5, 1],
      [mmsi, 4],
      [0, 4],
      ...text('XX1234', 7),
      ...text('INVENTED SHIP', 20),
      [36, 1],
      ...size,
      [0xffff, 2],
      [2 ** 32 - 1, 4],
      [190, 2],
      ...text('', 20),
      [0, 2],
    );
    expect(decodeAisMessage(129_794, voyage)).toEqual({
      type: 5,
      mmsi,
      own: false,
      callSign: 'XX1234',
      name: 'INVENTED SHIP',
      shipType: 36,
      length: 10,
      beam: 3,
      fromStarboard: expect.closeTo(1.2, 9),
      fromBow: 4,
      draught: expect.closeTo(1.9, 9),
    });
    expect(decodeAisMessage(129_809, littleEndian([24, 1], [mmsi, 4], ...text('B BOAT', 20), [0, 2]))).toEqual({
      type: 24,
      mmsi,
      own: false,
      name: 'B BOAT',
    });
    expect(
      decodeAisMessage(129_810, littleEndian([24, 1], [mmsi, 4], [37, 1], ...text('', 7), ...text('XX9', 7), ...size)),
    ).toMatchObject({
      type: 24,
      shipType: 37,
      callSign: 'XX9',
      length: 10,
      beam: 3,
    });
  });

  test('a message too short to say whose it is, or of another number, is none', () => {
    expect(decodeAisMessage(129_038, Uint8Array.of(1, 2, 3))).toBeUndefined();
    expect([decodeAisMessage(127_250, new Uint8Array(8)), isAisPgn(127_250)]).toEqual([undefined, false]);
  });
});

const parser = new FromPgn({ useCamel: true });
parser.on('error', () => undefined);
parser.on('warning', () => undefined);

/** What it calls each thing; texts it cuts and pads otherwise are compared by what is left. */
const theirNames = {
  longitude: ['longitude'],
  latitude: ['latitude'],
  course: ['cog'],
  speed: ['sog'],
  heading: ['heading', 'trueHeading'],
  rateOfTurn: ['rateOfTurn'],
  imo: ['imoNumber'],
  length: ['length'],
  beam: ['beam'],
  draught: ['draft'],
  fromBow: ['positionReferenceFromBow'],
  fromStarboard: ['positionReferenceFromStarboard'],
  name: ['name'],
  callSign: ['callsign'],
  destination: ['destination'],
} as const;

test('a second decoder (@canboat/canboatjs) finds the same in every message about ships', () => {
  const letter = fc.constantFrom(...Array.from('ABCXYZ 0189', (char) => char.charCodeAt(0)));
  const payload = fc.tuple(
    fc.uint8Array({ minLength: 80, maxLength: 80 }),
    fc.array(letter, { minLength: 80, maxLength: 80 }),
    fc.boolean(),
  );
  let compared = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(129_038, 129_039, 129_040, 129_794, 129_809, 129_810),
      payload,
      (pgn, [random, letters, isText]) => {
        const bytes = isText ? Uint8Array.from(random, (byte, at) => (at < 5 ? byte : (letters[at] ?? 0))) : random;
        bytes.set(littleEndian([5, 1], [mmsi, 4]));
        const ours = decodeAisMessage(pgn, bytes);
        const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join(',');
        const theirs: Record<string, unknown> = {
          ...parser.parseString(`2024-01-01T00:00:00.000Z,2,${pgn},1,255,80,${hex}`)?.fields,
        };
        expect([ours?.mmsi, ours?.type]).toEqual([Number(theirs.userId), (bytes[0] ?? 0) & 0x3f]);
        for (const [key, names] of Object.entries(theirNames)) {
          const value = ours?.[key as keyof typeof theirNames];
          const other = names.map((name) => theirs[name]).find((one) => one !== undefined);
          // It does not look for padding in front, nor inside of random bytes.
          if (typeof value === 'string') {
            if (isText) expect(value).toBe(String(other).trim());
          } else if (value !== undefined) {
            compared += 1;
            // It prints at most five places.
            expect([key, Math.abs(Number(other) - value) < 1.1e-5]).toEqual([key, true]);
          } else if (typeof other === 'number' && other !== 0) {
            // What lies outside of a field's range it leaves to its users.
            expect([key, 'outside', Math.abs(other) > 6]).toEqual([key, 'outside', true]);
          }
        }
      },
    ),
    { numRuns: 400 },
  );
  expect(compared).toBeGreaterThan(500);
});
