import { describe, expect, test } from 'vitest';
import { recordBus } from '../../../../tests/recordings/invented-bus.ts';
import { readRecording } from '../../../../tests/recordings/read-recording.ts';
import { pcapngBytes } from '../../../../tests/recordings/write-recording.ts';
import { UserError } from '../../boat/user-error.ts';

const bus = recordBus({ seconds: 2 });
const wanted = bus.map(({ id, data, timeUs }) => ({ id, data: [...data], timeUs }));
const bare = (frames: readonly { id: number; data: readonly number[]; timeUs?: number | undefined }[]) =>
  frames.map(({ id, data, timeUs }) => ({ id, data, timeUs }));
const joined = (...parts: readonly Uint8Array[]): Uint8Array => Uint8Array.from(parts.flatMap((part) => [...part]));

describe('pcapng files', () => {
  test.each([
    { littleEndian: true },
    { littleEndian: false },
    { littleEndian: true, resolution: 9 },
    { littleEndian: false, resolution: 9 },
    { littleEndian: true, resolution: 10 },
  ])('every frame comes back with its time: %j', (form) => {
    const { frames, counts } = readRecording(pcapngBytes(bus, form));
    expect(bare(frames)).toEqual(wanted);
    expect(counts).toMatchObject({ frames: bus.length, broken: 0, cutShort: false });
  });

  test('a clock in milliseconds, and one in parts of two, are good to their own step', () => {
    const timesOf = (resolution: number) =>
      readRecording(pcapngBytes(bus, { resolution })).frames.map(
        ({ timeUs }, at) => (bus[at]?.timeUs ?? 0) - (timeUs ?? 0),
      );
    expect(Math.max(...timesOf(3))).toBeLessThan(1000);
    expect(Math.max(...timesOf(0x80 | 20))).toBeLessThan(3);
  });

  test('simple packets have no time', () => {
    const { frames } = readRecording(pcapngBytes(bus, { simple: true }));
    expect(bare(frames)).toEqual(wanted.map((frame) => ({ ...frame, timeUs: undefined })));
  });

  test('sections of either byte order follow one another', () => {
    const bytes = joined(
      pcapngBytes(bus.slice(0, 50)),
      pcapngBytes(bus.slice(50), { littleEndian: false, resolution: 9 }),
    );
    expect(bare(readRecording(bytes).frames)).toEqual(wanted);
  });

  test('the file may be cut into pieces anywhere', () => {
    const bytes = pcapngBytes(bus.slice(0, 30));
    const whole = readRecording(bytes);
    for (let pieceBytes = 1; pieceBytes < 90; pieceBytes += 1) expect(readRecording(bytes, pieceBytes)).toEqual(whole);
  });

  test('a file cut off at any byte keeps what is whole, and says so unless a block ends there', () => {
    const bytes = pcapngBytes(bus.slice(0, 4));
    const headBytes = bytes.length - 4 * 48;
    for (let length = headBytes; length < bytes.length; length += 1) {
      const { counts } = readRecording(bytes.subarray(0, length));
      const whole = Math.floor((length - headBytes) / 48);
      expect(counts).toMatchObject({ frames: whole, cutShort: headBytes + whole * 48 !== length });
    }
  });

  test.each([
    ['a block that claims four gigabytes', 4, 0xffff_ffff, { frames: 2, broken: 1, cutShort: true }],
    ['a block of no length', 4, 0, { frames: 2, broken: 1, cutShort: true }],
    ['a second length that differs', 44, 52, { frames: 3, broken: 1, cutShort: false }],
    ['an interface nobody described', 8, 7, { frames: 3, broken: 1, cutShort: false }],
    ['fewer bytes than a frame', 20, 5, { frames: 3, broken: 1, cutShort: false }],
  ])('%s is counted with its place', (_what, offset, value, expected) => {
    const bytes = pcapngBytes(bus.slice(0, 4));
    const at = bytes.length - 2 * 48;
    new DataView(bytes.buffer).setUint32(at + offset, value, true);
    const { counts } = readRecording(bytes);
    expect(counts).toMatchObject(expected);
    expect(counts.brokenAt[0]?.byte).toBe(at);
  });

  test('a file of another network is refused with its link type; one that holds the bus too is read', () => {
    const other = pcapngBytes(bus.slice(0, 2), { link: 1 });
    expect(() => readRecording(other)).toThrow(UserError);
    expect(() => readRecording(other)).toThrow('link type 1)');
    const { frames } = readRecording(joined(pcapngBytes(bus.slice(0, 1)), pcapngBytes([])));
    expect(frames).toHaveLength(1);
  });
});
