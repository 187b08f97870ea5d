import fc from 'fast-check';
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
import { detectFormat } from './detect-format.ts';

const bus = recordBus({ seconds: 1 }).slice(0, 120);

describe('recordings of any form', () => {
  test.each([
    ['a pcap file', pcapBytes(bus), 'pcap'],
    ['candump text', candumpBytes(bus), 'text'],
    ['nothing at all', new Uint8Array(0), 'text'],
    ['sentences under a comment', garbage('# boat\n\n$IIHDT,,T*0C\n'), 'text'],
    ['sentences after the noise of a port that opens', garbage('\x00\x80\x03$IIHDT,,T*0C\n'), 'text'],
    ['a packed file', Uint8Array.of(0x1f, 0x8b, 8, 0), 'gzip'],
    ['the newer capture form', pcapngBytes(bus), 'pcapng'],
    ['a picture', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0, 0), 'other'],
  ])('%s is told from its first bytes', (_what, bytes, format) => {
    expect(detectFormat(bytes)).toBe(format);
  });

  test('an empty recording is read as one without frames', () => {
    expect(readRecording(new Uint8Array(0)).counts).toMatchObject({
      frames: 0,
      comments: 0,
      broken: 0,
      cutShort: false,
    });
    expect(readRecording(pcapBytes([])).counts).toMatchObject({ frames: 0, comments: 0, broken: 0, cutShort: false });
    expect(readRecording(pcapBytes([]).subarray(0, 11)).counts).toMatchObject({ frames: 0, cutShort: true });
  });

  test('the mark some editors put in front of a text is passed over', () => {
    const marked = Uint8Array.from([0xef, 0xbb, 0xbf, ...candumpBytes(bus)]);
    expect(readRecording(marked).counts).toMatchObject({ frames: bus.length, broken: 0, noiseBytes: 0 });
  });

  test('what is no recording is refused in one sentence that names the forms read', () => {
    const picture = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0, 0);
    expect(() => readRecording(picture)).toThrow(UserError);
    expect(() => readRecording(picture)).toThrow('not a recording of the bus');
  });

  const damage = fc.array(fc.tuple(fc.nat(4000), fc.integer({ min: 0, max: 255 })), { maxLength: 40 });
  test.each([
    ['candump text', candumpBytes(bus)],
    ['comma-separated text', csvBytes(bus)],
    ['a pcap file', pcapBytes(bus)],
    ['a pcapng file', pcapngBytes(bus)],
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
