import { FromPgn } from '@canboat/canboatjs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fieldRows } from '../../facts/generated/message-fields.ts';
import { lookupWord, type MessageField, messageField } from '../../facts/message-fields.ts';
import { degreesOfRadians } from '../../units/compass-angle.ts';
import { knotsOfMetresPerSecond } from '../../units/knots.ts';
import { emptinessOf } from './main-field.ts';
import { bitsAt, fieldReader } from './read-field.ts';

const bytesOf = (hex: string): Uint8Array =>
  Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));

const fieldNamed = (pgn: number, id: string): MessageField => {
  const field = messageField(pgn, id);
  if (field === undefined) throw new Error(`No field ${id} of ${pgn}.`);
  return field;
};

/** Reads fields of one message by name. */
const message = (pgn: number, hex: string) => {
  const payload = bytesOf(hex);
  return {
    payload,
    at: (id: string) => fieldReader(fieldNamed(pgn, id))(payload),
    word: (id: string) => {
      const field = fieldNamed(pgn, id);
      const value = fieldReader(field)(payload);
      return value === undefined ? undefined : lookupWord(field.lookup ?? '', value);
    },
  };
};

describe('the fields of a message', () => {
  test('MS-62: a magnetic heading without deviation and variation (CANboat database)', () => {
    const { at, word } = message(127_250, 'FF725AFF7FFF7FFD');
    expect(at('heading')).toBeCloseTo(2.3154, 9);
    expect(Math.abs(degreesOfRadians(at('heading') ?? 0) - 132.663)).toBeLessThan(0.001);
    expect([at('deviation'), at('variation'), word('reference')]).toEqual([undefined, undefined, 'Magnetic']);
  });

  test('MS-63: a heading with deviation and variation (CANboat database)', () => {
    const { at, word } = message(127_250, 'FFB88897FC9C01FD');
    const degrees = ['heading', 'deviation', 'variation'].map((id) => degreesOfRadians(at(id) ?? 0));
    [200.535, -5.002, 2.361].forEach((expected, place) => {
      expect(Math.abs((degrees[place] ?? 0) - expected)).toBeLessThan(0.002);
    });
    expect(word('reference')).toBe('Magnetic');
  });

  test('MS-64: a depth below the transducer with an offset to the keel (CANboat database)', () => {
    const { at } = message(128_267, '21D204000056FAFF');
    expect(at('depth')).toBeCloseTo(12.34, 9);
    expect(at('offset')).toBeCloseTo(-1.45, 9);
    expect(at('range')).toBeUndefined();
  });

  test('MS-66: a depth without echo counts as absent (CANboat database: all ones = not available)', () => {
    const { at, payload } = message(128_267, '00FFFFFFFF0000FF');
    expect(at('depth')).toBeUndefined();
    expect(emptinessOf(128_267)(payload)).toBe(true);
    expect(emptinessOf(128_267)(bytesOf('21D204000056FAFF'))).toBe(false);
  });

  test('MS-67: apparent wind (CANboat database)', () => {
    const { at, word } = message(130_306, '000403E5BEFAFFFF');
    expect(at('windSpeed')).toBeCloseTo(7.72, 9);
    expect(Math.abs(knotsOfMetresPerSecond(at('windSpeed') ?? 0) - 15.006)).toBeLessThan(0.002);
    expect(Math.abs(degreesOfRadians(at('windAngle') ?? 0) - 279.999)).toBeLessThan(0.002);
    expect(word('reference')).toBe('Apparent');
  });

  test('MS-68: an invented position (CANboat database)', () => {
    const { at } = message(129_025, '3ED060207948F7F9');
    expect(Math.abs((at('latitude') ?? 0) - 54.3215678)).toBeLessThan(5e-8);
    expect(Math.abs((at('longitude') ?? 0) + 10.1234567)).toBeLessThan(5e-8);
  });

  test('MS-69: a course and speed over ground (CANboat database)', () => {
    const { at, word } = message(129_026, '05FCB87A5E01FFFF');
    expect(Math.abs(degreesOfRadians(at('cog') ?? 0) - 180)).toBeLessThan(0.002);
    expect(at('sog')).toBeCloseTo(3.5, 9);
    expect(Math.abs(knotsOfMetresPerSecond(at('sog') ?? 0) - 6.803)).toBeLessThan(0.002);
    expect(word('cogReference')).toBe('True');
  });

  test('MS-71: a battery (CANboat database)', () => {
    const { at } = message(127_508, '01FE0483FF777409');
    expect(at('instance')).toBe(1);
    expect(at('voltage')).toBeCloseTo(12.78, 9);
    expect(at('current')).toBeCloseTo(-12.5, 9);
    expect(at('temperature')).toBeCloseTo(298.15, 9);
  });

  test('codes of no value are none: not available, error and reserved; one below them is the largest value', () => {
    const depth = (hex: string) => message(128_267, `00${hex}0000FF`).at('depth');
    expect(['FFFFFFFF', 'FEFFFFFF', 'FDFFFFFF'].map(depth)).toEqual([undefined, undefined, undefined]);
    expect(depth('FCFFFFFF')).toBeCloseTo(42_949_672.92, 2);
    const offset = (hex: string) => message(128_267, `00D2040000${hex}FF`).at('offset');
    expect(['FF7F', 'FE7F', 'FD7F', '0080'].map(offset)).toEqual([undefined, undefined, undefined, undefined]);
    expect(offset('FC7F')).toBeCloseTo(32.764, 9);
    expect(offset('0180')).toBeCloseTo(-32.767, 9);
  });

  test('an angle of more than a full circle is no angle, and a message cut short has no value', () => {
    expect(message(127_250, 'FF80F6FF7FFF7FFD').at('heading')).toBeUndefined();
    expect(message(127_250, 'FF72').at('heading')).toBeUndefined();
    expect(emptinessOf(127_250)(bytesOf('FF72'))).toBe(true);
  });

  test('a latitude of 64 bits is read to a double, below zero too, and its code of no value is known', () => {
    const fix = (hex: string) => message(129_029, `${'00'.repeat(7)}${hex}${'00'.repeat(28)}`);
    expect(fix('007AF99AB25798FE').at('latitude')).toBeCloseTo(-10.1234567, 12);
    expect(fix('FFFFFFFFFFFFFF7F').at('latitude')).toBeUndefined();
    const altitude = (hex: string) => message(129_029, `${'00'.repeat(23)}${hex}${'00'.repeat(12)}`).at('altitude');
    expect(altitude('FFFFFFFFFFFFFF7F')).toBeUndefined();
    expect(altitude('E0C81000000000FF')).toBeLessThan(0);
    expect(altitude('E0C8100000000000')).toBeCloseTo(1.1, 6);
  });

  test('bits put together are the bits taken apart, wherever they stand', () => {
    const place = fc.record({
      bytes: fc.uint8Array({ minLength: 8, maxLength: 8 }),
      firstBit: fc.nat(31),
      bits: fc.integer({ min: 1, max: 32 }),
    });
    fc.assert(
      fc.property(place, ({ bytes, firstBit, bits }) => {
        const whole = bytes.reduceRight((sum, byte) => sum * 256n + BigInt(byte), 0n);
        const expected = (whole >> BigInt(firstBit)) & ((1n << BigInt(bits)) - 1n);
        expect(bitsAt(bytes, { firstBit, bits })).toBe(Number(expected));
      }),
    );
  });
});

const parser = new FromPgn({ useCamel: true });
parser.on('error', () => undefined);
parser.on('warning', () => undefined);

/** Bytes that say how many parts follow: the second decoder lists none where they say none. */
const partCounts: ReadonlyMap<number, number> = new Map([
  [127_503, 1],
  [127_504, 1],
  [129_029, 42],
]);

const withOnePart = (pgn: number, bytes: Uint8Array): Uint8Array => {
  const countAt = partCounts.get(pgn);
  return countAt === undefined ? bytes : bytes.with(countAt, 1);
};

/** The same message through the decoder of another project, whose lists of parts begin with the part read here. */
const secondReading = (pgn: number, bytes: Uint8Array): Record<string, unknown> => {
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join(',');
  const found = parser.parseString(`2024-01-01T00:00:00.000Z,2,${pgn},1,255,${bytes.length},${hex}`);
  const fields: Record<string, unknown> = { ...found?.fields };
  const [first] = Array.isArray(fields.list) ? fields.list : [];
  return { ...fields, ...(first as Record<string, unknown> | undefined) };
};

const secondsOf = (text: string): number =>
  (text.startsWith('-') ? -1 : 1) *
  text
    .replace('-', '')
    .split(':')
    .reduce((sum, part) => sum * 60 + Number.parseFloat(part), 0);

const daysOf = (text: string): number => Date.parse(`${text.replaceAll('.', '-')}T00:00:00Z`) / 86_400_000;

/** Its value as a number: it prints times and dates, and the numbers of ships with their zeros in front. */
const plainValue = (value: unknown, { id, unit }: MessageField): unknown => {
  if (typeof value !== 'string') return value;
  if (unit === 'd') return daysOf(value);
  if (id === 'userId') return Number(value);
  return unit === 's' ? secondsOf(value) : value;
};

// The second decoder adds the offset of one field before the resolution and so leaves the range the database states,
// and makes coulombs of ampere hours, whereby none becomes zero.
// It writes the hours west of Greenwich with minutes that run the wrong way, and tells some codes of ships in words only.
const codesInWords: ReadonlySet<string> = new Set([
  'messageId',
  'navStatus',
  'typeOfShip',
  'aisTransceiverInformation',
]);
const isReadOtherwise = ({ id, unit }: MessageField): boolean =>
  id === 'peukertExponent' || id === 'localOffset' || unit === 'Ah' || codesInWords.has(id);
const everyField = fieldRows.map(([pgn, id]) => fieldNamed(pgn, id)).filter((field) => !isReadOtherwise(field));
const numbers = [...new Set(everyField.map(({ pgn }) => pgn))];

describe('a second decoder (@canboat/canboatjs) over the same bytes', () => {
  test('finds the same value in every field of every message, or none', () => {
    // Many bytes of FF and 7F, so that fields without a value are as common as on a bus.
    const byte = fc.oneof(fc.integer({ min: 0, max: 255 }), fc.constantFrom(0xff, 0xfe, 0x7f, 0));
    const payloads = fc
      .uint8Array({ minLength: 80, maxLength: 80 })
      .chain((bytes) =>
        fc.array(byte, { minLength: 80, maxLength: 80 }).map((mixed) => bytes.map((one, at) => mixed[at] ?? one)),
      );
    let compared = 0;
    fc.assert(
      fc.property(fc.constantFrom(...numbers), payloads, (pgn, random) => {
        const bytes = withOnePart(pgn, random);
        const theirs = secondReading(pgn, bytes);
        for (const field of everyField.filter((one) => one.pgn === pgn)) {
          const ours = fieldReader(field)(bytes);
          const other = plainValue(theirs[field.id], field);
          if (ours === undefined) {
            // It leaves values below the least, and codes of lookups, to its users.
            const outside = typeof other !== 'number' || other < field.least || other > field.largest;
            expect([field.id, outside]).toEqual([field.id, true]);
            continue;
          }
          // Rounding makes it refuse the very largest value of some fields.
          if (other === undefined && ours > field.largest - field.resolution / 2) continue;
          compared += 1;
          const word = field.lookup === undefined ? undefined : lookupWord(field.lookup, ours);
          if (word !== undefined) expect(other).toBe(word);
          else
            expect(Math.abs(Number(other) - ours)).toBeLessThanOrEqual(
              field.resolution * 0.51 + Math.abs(ours) * 1e-12,
            );
        }
      }),
      { numRuns: 1000 },
    );
    expect(compared).toBeGreaterThan(500);
  });
});
