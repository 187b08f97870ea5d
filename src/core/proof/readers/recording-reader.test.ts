import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { recordBus } from '../../../../tests/recordings/invented-bus.ts';
import { readRecording } from '../../../../tests/recordings/read-recording.ts';
import { candumpBytes, garbage, pcapBytes } from '../../../../tests/recordings/write-recording.ts';
import { UserError } from '../../boat/user-error.ts';
import { detectFormat } from './detect-format.ts';

const bus = recordBus({ seconds: 1 }).slice(0, 120);

describe('recordings of any form', () => {
  test.each([
    ['a pcap file', pcapBytes(bus), 'pcap'],
    ['candump text', candumpBytes(bus), 'text'],
    ['nothing at all', new Uint8Array(0), 'text'],
    ['sentences under a comment', garbage('# boat\n\n$IIHDT,,T*0C\n'), 'sentences'],
    ['sentences with tags', garbage('\\s:a*00\\$IIHDT,,T*0C\n'), 'sentences'],
    ['a packed file', Uint8Array.of(0x1f, 0x8b, 8, 0), 'gzip'],
    ['the newer capture form', Uint8Array.of(0x0a, 0x0d, 0x0d, 0x0a, 28, 0, 0, 0), 'pcapng'],
    ['a picture', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0, 0), 'other'],
  ])('%s is told from its first bytes', (_what, bytes, format) => {
    expect(detectFormat(bytes)).toBe(format);
  });

  test('an empty recording is read as one without frames', () => {
    expect(readRecording(new Uint8Array(0)).counts).toEqual({ frames: 0, comments: 0, broken: 0, cutShort: false });
    expect(readRecording(pcapBytes([])).counts).toEqual({ frames: 0, comments: 0, broken: 0, cutShort: false });
    expect(readRecording(pcapBytes([]).subarray(0, 11)).counts).toMatchObject({ frames: 0, cutShort: true });
  });

  test.each([
    ['packed', Uint8Array.of(0x1f, 0x8b, 8, 0), 'gzip'],
    ['of sentences', garbage('$IIHDT,,T*0C\n'), 'NMEA 0183'],
  ])('a recording that is %s is refused in one sentence', (_what, bytes, word) => {
    expect(() => readRecording(bytes)).toThrow(UserError);
    expect(() => readRecording(bytes)).toThrow(word);
  });

  const damage = fc.array(fc.tuple(fc.nat(4000), fc.integer({ min: 0, max: 255 })), { maxLength: 40 });
  test.each([
    ['candump text', candumpBytes(bus)],
    ['a pcap file', pcapBytes(bus)],
  ])('%s with bytes changed anywhere is read or refused, and never breaks the reader', (_what, sound) => {
    fc.assert(
      fc.property(damage, fc.integer({ min: 1, max: 600 }), fc.nat(4000), (hits, pieceBytes, keptBytes) => {
        const bytes = sound.slice(0, keptBytes);
        for (const [at, value] of hits) bytes[at] = value;
        try {
          const { frames, counts } = readRecording(bytes, pieceBytes);
          expect(counts.frames).toBe(frames.length);
          for (const frame of frames) {
            expect(frame.length).toBeLessThanOrEqual(8);
            expect(frame.id).toBeLessThanOrEqual(0x1fff_ffff);
          }
        } catch (error) {
          expect(error).toBeInstanceOf(UserError);
        }
      }),
    );
  });

  test('bytes of any kind are read or refused', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 2000 }), (bytes) => {
        try {
          readRecording(bytes, 100);
        } catch (error) {
          expect(error).toBeInstanceOf(UserError);
        }
      }),
    );
  });
});
