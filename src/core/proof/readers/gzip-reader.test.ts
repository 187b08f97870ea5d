import { gzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { recordBus } from '../../../../tests/recordings/invented-bus.ts';
import { readRecording } from '../../../../tests/recordings/read-recording.ts';
import {
  candumpBytes,
  csvBytes,
  garbage,
  pcapBytes,
  pcapngBytes,
} from '../../../../tests/recordings/write-recording.ts';
import { UserError } from '../../boat/user-error.ts';

const bus = recordBus({ seconds: 2 });

describe('recordings packed with gzip', () => {
  test.each([
    ['candump text', candumpBytes(bus)],
    ['comma-separated lines', csvBytes(bus)],
    ['pcap', pcapBytes(bus)],
    ['pcapng', pcapngBytes(bus)],
    ['sentences', garbage('$SDDPT,12.3,-1.5*4E\r\n'.repeat(50))],
  ])('%s is found as it is unpacked, in pieces of any size', (_what, bytes) => {
    const plain = readRecording(bytes);
    const packed = gzipSync(bytes);
    expect(readRecording(packed)).toEqual(plain);
    expect(readRecording(packed, 7)).toEqual(plain);
  });

  test('a recording kept in several parts, each packed by itself, is read through', () => {
    const parts = [candumpBytes(bus.slice(0, 100)), candumpBytes(bus.slice(100))].flatMap((part) => [
      ...gzipSync(part),
    ]);
    expect(readRecording(Uint8Array.from(parts)).counts).toMatchObject({ frames: bus.length, cutShort: false });
  });

  test('one cut off at any byte keeps what came through, and says so', () => {
    const packed = gzipSync(candumpBytes(bus.slice(0, 60)));
    for (let length = 2; length < packed.length; length += 11) {
      const { counts } = readRecording(packed.subarray(0, length));
      expect(counts.cutShort).toBe(true);
      expect(counts.frames).toBeLessThanOrEqual(60);
    }
  });

  test('one damaged in the middle tells where', () => {
    const packed = gzipSync(candumpBytes(bus), { level: 0 });
    packed.fill(0xff, packed.length / 2, packed.length / 2 + 20);
    expect(readRecording(packed).counts.broken).toBeGreaterThan(0);
    const squeezed = gzipSync(candumpBytes(bus));
    squeezed[10] = 0xff;
    expect(readRecording(squeezed).counts).toMatchObject({ frames: 0, broken: 1, cutShort: true });
  });

  test('twenty megabytes packed into little are read through in pieces', () => {
    const bomb = gzipSync(new Uint8Array(5_000_000).fill(0x61), { level: 9 });
    expect(bomb.length).toBeLessThan(10_000);
    const { counts } = readRecording(Uint8Array.from(Array.from({ length: 4 }, () => [...bomb]).flat()));
    expect(counts).toMatchObject({ frames: 0, broken: 1, noiseBytes: 20_000_000 });
  });

  test('a head without end does not fill the memory', () => {
    const head = Uint8Array.of(0x1f, 0x8b, 8, 8, 0, 0, 0, 0, 0, 3);
    const bytes = new Uint8Array(3_000_000).fill(0x61);
    bytes.set(head);
    expect(readRecording(bytes).counts).toMatchObject({ frames: 0, broken: 1, cutShort: true });
  });

  test('what is packed twice, or is no recording inside, is refused', () => {
    const twice = gzipSync(gzipSync(candumpBytes(bus)));
    expect(() => readRecording(twice)).toThrow(UserError);
    expect(() => readRecording(twice)).toThrow('twice');
    expect(() => readRecording(gzipSync(new Uint8Array(5000)))).toThrow('not a recording');
  });
});
