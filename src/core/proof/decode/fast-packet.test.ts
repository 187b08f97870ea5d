import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fastPacketFrames } from '../../../../tests/recordings/payloads.ts';
import { buildCanId } from '../readers/can-id.ts';
import { startFastPackets } from './fast-packet.ts';

const bytesOf = (hex: string): Uint8Array =>
  Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
const idOf = (pgn: number, source = 1): number => buildCanId({ priority: 6, pgn, destination: 255, source });
const frameOf = (data: Uint8Array, id = idOf(127_506)) => ({ id, length: data.length, data });

describe('fast packets', () => {
  test('MS-24: frames of a message of 0 to 223 bytes (CANboat PGN database 6.2.0, packet framing section)', () => {
    const lengths = [0, 1, 6, 7, 13, 14, 20, 21, 27, 28, 43, 134, 223];
    const expected = [1, 1, 1, 2, 2, 3, 3, 4, 4, 5, 7, 20, 32];
    for (const [at, length] of lengths.entries()) {
      const packets = startFastPackets();
      const frames = fastPacketFrames({ payload: new Uint8Array(length).fill(7), sequence: 0 });
      expect(frames).toHaveLength(expected[at] ?? -1);
      const whole = frames.map((data) => packets.take(frameOf(data))?.length);
      expect(whole).toEqual([...new Array<undefined>(frames.length - 1), length]);
    }
  });

  test('MS-26: 223 bytes are the longest message, 224 are refused (CANboat PGN database 6.2.0)', () => {
    const packets = startFastPackets();
    expect(packets.take(frameOf(bytesOf('00E0010203040506')))).toBeUndefined();
    expect(packets.counts()).toMatchObject({ malformed: 1, openAtEnd: 0 });
    expect(packets.take(frameOf(bytesOf('00DF010203040506')))).toBeUndefined();
    expect(packets.counts()).toMatchObject({ malformed: 1, openAtEnd: 1 });
  });

  test('MS-27: two frames of PGN 127506 make eleven bytes (CANboat PGN database 6.2.0, packet framing section)', () => {
    const packets = startFastPackets();
    expect(packets.take(frameOf(bytesOf('600B0001543762FF')))).toBeUndefined();
    expect(packets.take(frameOf(bytesOf('612C01E803C800FF')))).toEqual(bytesOf('0001543762FF2C01E803C8'));
  });

  test.each([
    [[0, 1, 2], { complete: 1, incomplete: 0, orphan: 0 }],
    [[1, 2], { complete: 0, incomplete: 0, orphan: 2 }],
    [[0, 2], { complete: 0, incomplete: 1, orphan: 0 }],
    [[0, 1, 0, 1, 2], { complete: 1, incomplete: 1, orphan: 0 }],
  ])('MS-28: counters %j of a message of 20 bytes are counted, never repaired', (counters, expected) => {
    const packets = startFastPackets();
    const frames = fastPacketFrames({ payload: new Uint8Array(20), sequence: 2 });
    for (const counter of counters) packets.take(frameOf(frames[counter] ?? new Uint8Array()));
    const { complete, orphan, outOfSequence, overwritten } = packets.counts();
    expect({ complete, orphan, incomplete: outOfSequence + overwritten }).toEqual(expected);
  });

  test('messages of different senders and sequences may be mixed frame by frame', () => {
    const lane = fc.record({
      source: fc.integer({ min: 0, max: 251 }),
      sequence: fc.integer({ min: 0, max: 7 }),
      payload: fc.uint8Array({ minLength: 0, maxLength: 223 }),
    });
    const lanes = fc.uniqueArray(lane, { maxLength: 6, selector: (one) => one.source * 8 + one.sequence });
    fc.assert(
      fc.property(lanes, fc.array(fc.nat(5), { maxLength: 300 }), (sent, turns) => {
        const packets = startFastPackets();
        const queues = sent.map((one) => ({ ...one, frames: fastPacketFrames(one) }));
        const got = new Map<number, number[]>();
        const everyTurn = [...turns, ...queues.flatMap((queue, at) => queue.frames.map(() => at))];
        for (const turn of everyTurn) {
          const queue = queues[turn];
          const data = queue?.frames.shift();
          if (queue === undefined || data === undefined) continue;
          const whole = packets.take(frameOf(data, idOf(129_540, queue.source)));
          if (whole !== undefined) got.set(turn, [...whole]);
        }
        expect([...got].sort(([a], [b]) => a - b)).toEqual(sent.map((one, at) => [at, [...one.payload]]));
        expect(packets.counts()).toMatchObject({ complete: sent.length, orphan: 0, openAtEnd: 0 });
      }),
      { numRuns: 50 },
    );
  });

  test('a short frame in the middle leaves FF, not bytes of an earlier message', () => {
    const packets = startFastPackets();
    for (const data of fastPacketFrames({ payload: new Uint8Array(13).fill(0x11), sequence: 0 }))
      packets.take(frameOf(data));
    packets.take(frameOf(bytesOf('200D22')));
    expect(packets.take(frameOf(bytesOf('2133')))).toEqual(bytesOf('22FFFFFFFFFF33FFFFFFFFFFFF'));
  });

  test('an inverter that sends its status in a plain single frame is understood', () => {
    const packets = startFastPackets();
    const plain = bytesOf('0100FFF1FFFFFFFF');
    expect(packets.take(frameOf(plain, idOf(127_509)))).toEqual(plain);
    expect(packets.counts()).toMatchObject({ complete: 0, orphan: 0 });
  });

  test('an inverter known to send in parts keeps its orphans', () => {
    const packets = startFastPackets();
    for (const data of fastPacketFrames({ payload: new Uint8Array(8), sequence: 0 }))
      packets.take(frameOf(data, idOf(127_509)));
    packets.take(frameOf(bytesOf('2100FFFFFFFFFFFF'), idOf(127_509)));
    expect(packets.counts()).toMatchObject({ complete: 1, orphan: 1 });
  });

  test('first frames without end do not fill the memory', () => {
    const packets = startFastPackets();
    for (let source = 0; source < 256; source += 1) {
      for (let pgn = 130_816; pgn < 130_850; pgn += 1) packets.take(frameOf(bytesOf('00DF'), idOf(pgn, source)));
    }
    const { openAtEnd, outOfSequence } = packets.counts();
    expect(openAtEnd).toBe(4096);
    expect(openAtEnd + outOfSequence).toBe(256 * 34);
  });
});
