import { readFileSync } from 'node:fs';
import { FromPgn } from '@canboat/canboatjs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { recordBus } from '../../../../tests/recordings/invented-bus.ts';
import { candumpBytes } from '../../../../tests/recordings/write-recording.ts';
import { lookupWord, messageField } from '../../facts/message-fields.ts';
import { isFastPacket } from '../../facts/pgns.ts';
import { pgnOfCanId } from '../readers/can-id.ts';
import { startLineReader } from '../readers/line-reader.ts';
import { decodeMessage, isDecoded } from './decode-message.ts';
import type { DecodedValue } from './decoded-value.ts';
import { startFastPackets } from './fast-packet.ts';
import { messageForms } from './message-quantities.ts';

const bytesOf = (hex: string): Uint8Array =>
  Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
const decoded = (pgn: number, hex: string) =>
  decodeMessage(pgn, bytesOf(hex)).map((one) => ({ ...one, value: Number(one.value.toPrecision(12)) }));

describe('the values of a message', () => {
  test.each<readonly [string, number, string, DecodedValue[]]>([
    [
      'a magnetic heading',
      127_250,
      'FF725AFF7FFF7FFD',
      [{ quantity: 'heading', value: 2.3154, reference: 'magnetic' }],
    ],
    [
      'a depth with its offset',
      128_267,
      '21D204000056FAFF',
      [
        { quantity: 'depth', value: 12.34, reference: 'transducer' },
        { quantity: 'depth-offset', value: -1.45 },
      ],
    ],
    [
      'apparent wind',
      130_306,
      '000403E5BEFAFFFF',
      [
        { quantity: 'wind-speed', value: 7.72, reference: 'apparent' },
        { quantity: 'wind-angle', value: 4.8869, reference: 'apparent' },
      ],
    ],
    [
      'a battery',
      127_508,
      '01FE0483FF777409',
      [
        { quantity: 'battery-voltage', value: 12.78, instance: 1 },
        { quantity: 'battery-current', value: -12.5, instance: 1 },
        { quantity: 'battery-temperature', value: 298.15, instance: 1 },
      ],
    ],
    [
      'a fuel tank',
      127_505,
      '02D430B80B0000FF',
      [
        { quantity: 'tank-level', value: 50, instance: 2, kind: 0 },
        { quantity: 'tank-capacity', value: 300, instance: 2, kind: 0 },
      ],
    ],
    [
      'water and air',
      130_310,
      '00D5706D71FFFFFF',
      [
        { quantity: 'temperature', value: 288.85, kind: 0 },
        { quantity: 'temperature', value: 290.37, kind: 1 },
      ],
    ],
    ['date and time', 126_992, '00F07F500000A12A', [{ quantity: 'unix-time', value: 20_607 * 86_400 + 71_519.4368 }]],
  ])('%s come with reference, instance and kind', (_what, pgn, hex, expected) => {
    expect(decoded(pgn, hex).map((one) => ({ ...one, value: Math.round(one.value * 100) / 100 }))).toEqual(
      expected.map((one) => ({ ...one, value: Math.round(one.value * 100) / 100 })),
    );
  });

  test('not available is absence, a message cut short has less, and one that is not read has nothing', () => {
    expect(decodeMessage(128_267, bytesOf('00FFFFFFFF0000FF'))).toEqual([{ quantity: 'depth-offset', value: 0 }]);
    expect(decodeMessage(127_250, bytesOf('FF725A'))).toEqual([
      { quantity: 'heading', value: expect.closeTo(2.3154, 9) },
    ]);
    expect(decodeMessage(127_250, new Uint8Array(0))).toEqual([]);
    expect([decodeMessage(130_822, bytesOf('0102')), isDecoded(130_822)]).toEqual([[], false]);
  });

  test('every field that is read stands in the table of fields', () => {
    for (const [pgn, { values, instance, kind }] of messageForms)
      for (const id of [...values.map(({ field }) => field), instance, kind])
        if (id !== undefined) expect([pgn, id, messageField(pgn, id)?.pgn]).toEqual([pgn, id, pgn]);
  });
});

interface Whole {
  readonly pgn: number;
  readonly payload: Uint8Array;
}

const messagesIn = (bytes: Uint8Array): Whole[] => {
  const packets = startFastPackets();
  const found: Whole[] = [];
  const reader = startLineReader({
    onFrame(frame) {
      const pgn = pgnOfCanId(frame.id);
      const payload = isFastPacket(pgn) ? packets.take(frame) : frame.data.subarray(0, frame.length);
      if (payload !== undefined) found.push({ pgn, payload: payload.slice() });
    },
  });
  reader.push(bytes);
  reader.end();
  return found;
};

const extract = (name: string): Uint8Array =>
  readFileSync(new URL(`../../../../tests/recordings/extracts/${name}`, import.meta.url));

const parser = new FromPgn({ useCamel: true });
parser.on('error', () => undefined);
parser.on('warning', () => undefined);

const fieldsBySecond = ({ pgn, payload }: Whole): Record<string, unknown> => {
  const hex = Array.from(payload, (byte) => byte.toString(16).padStart(2, '0')).join(',');
  return { ...parser.parseString(`2024-01-01T00:00:00.000Z,2,${pgn},1,255,${payload.length},${hex}`)?.fields };
};

const referenceWords: Readonly<Record<string, readonly string[]>> = {
  true: ['True', 'True (ground referenced to North)'],
  magnetic: ['Magnetic', 'Magnetic (ground referenced to Magnetic North)'],
  apparent: ['Apparent'],
  'true-to-bow': ['True (boat referenced)'],
  'true-over-water': ['True (water referenced)'],
};

/** Its number of a code, which it tells in words. */
const codeOf = (pgn: number, id: string, word: unknown): unknown => {
  const lookup = messageField(pgn, id)?.lookup;
  if (typeof word !== 'string' || lookup === undefined) return word;
  return Array.from({ length: 256 }, (_unused, code) => code).find((code) => lookupWord(lookup, code) === word);
};

/** Its value as a number: it prints times. */
const numberOf = (value: unknown): number =>
  typeof value === 'string' && value.includes(':')
    ? value.split(':').reduce((sum, part) => sum * 60 + Number.parseFloat(part), 0)
    : Number(value);

/** Compares a code; one that is none it leaves to its users, as a number. */
const compareCode = (
  pgn: number,
  id: string | undefined,
  { ours, theirs }: { readonly ours: number | undefined; readonly theirs: Record<string, unknown> },
): void => {
  if (id === undefined) return;
  const code = codeOf(pgn, id, theirs[id]);
  if (ours !== undefined) expect([id, code]).toEqual([id, ours]);
  else expect(code === undefined || Number(code) > (messageField(pgn, id)?.largest ?? 0)).toBe(true);
};

/** Compares every value of one message with its fields; returns how many. */
const compare = (whole: Whole): number => {
  const form = messageForms.get(whole.pgn);
  const theirs = fieldsBySecond(whole);
  const ours = decodeMessage(whole.pgn, whole.payload);
  if (form === undefined) return 0;
  for (const { quantity, field, reference } of form.values) {
    const found = ours.find((one) => one.quantity === quantity);
    if (found === undefined) {
      // It leaves what lies outside of a field's range to its users.
      const { least = 0, largest = 0 } = messageField(whole.pgn, field) ?? {};
      const other = theirs[field];
      expect([whole.pgn, field, typeof other === 'number' && other >= least && other <= largest]).toEqual([
        whole.pgn,
        field,
        false,
      ]);
      continue;
    }
    const { resolution = 0 } = messageField(whole.pgn, field) ?? {};
    expect(Math.abs(numberOf(theirs[field]) - found.value)).toBeLessThanOrEqual(
      resolution * 0.51 + Math.abs(found.value) * 1e-12,
    );
    const by =
      reference !== undefined && 'field' in reference
        ? reference.field
        : whole.pgn === 130_306
          ? 'reference'
          : undefined;
    if (by !== undefined && found.reference !== undefined)
      expect(referenceWords[found.reference]).toContain(theirs[by]);
    compareCode(whole.pgn, form.instance, { ours: found.instance, theirs });
    compareCode(whole.pgn, form.kind, { ours: found.kind, theirs });
  }
  return ours.length;
};

describe('a second decoder (@canboat/canboatjs) over whole messages', () => {
  test.each([
    ['an extract of a full bus', extract('full-bus.candump.log'), 50],
    ['an extract of a boat with a pilot', extract('pilot-boat.candump.log'), 15],
    ['an extract of a power-up', extract('bench-power-up.candump.txt'), 0],
    ['an invented bus', candumpBytes(recordBus({ seconds: 5 })), 200],
  ])('tells the same values, references, instances and kinds: %s', (_what, bytes, least) => {
    const compared = messagesIn(bytes).reduce((sum, whole) => sum + compare(whole), 0);
    expect(compared).toBeGreaterThanOrEqual(least);
  });

  test('tells the same of every message that is read, whatever its bytes', () => {
    const byte = fc.oneof(fc.integer({ min: 0, max: 255 }), fc.constantFrom(0xff, 0xfe, 0x7f, 0));
    const payload = fc.array(byte, { minLength: 60, maxLength: 60 }).map((bytes) => Uint8Array.from(bytes));
    let compared = 0;
    fc.assert(
      fc.property(fc.constantFrom(...messageForms.keys()), payload, (pgn, bytes) => {
        compared += compare({ pgn, payload: bytes });
      }),
      { numRuns: 600 },
    );
    expect(compared).toBeGreaterThan(500);
  });
});
