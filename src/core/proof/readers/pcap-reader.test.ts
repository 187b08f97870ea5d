import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { recordBus } from '../../../../tests/recordings/invented-bus.ts';
import { readRecording } from '../../../../tests/recordings/read-recording.ts';
import { pcapBytes } from '../../../../tests/recordings/write-recording.ts';
import { UserError } from '../../boat/user-error.ts';

const bus = recordBus({ seconds: 2 });
const wanted = bus.map(({ id, data, timeUs }) => ({ id, data: [...data], timeUs }));

describe('pcap files', () => {
  test.each([
    { littleEndian: true, nanoseconds: false },
    { littleEndian: false, nanoseconds: false },
    { littleEndian: true, nanoseconds: true },
    { littleEndian: false, nanoseconds: true },
  ])('every frame comes back with its time: %j', (form) => {
    const { frames, counts } = readRecording(pcapBytes(bus, form));
    expect(frames.map(({ id, data, timeUs }) => ({ id, data, timeUs }))).toEqual(wanted);
    expect(counts).toMatchObject({ frames: bus.length, comments: 0, broken: 0, cutShort: false });
  });

  test('the file may be cut into pieces anywhere', () => {
    const bytes = pcapBytes(bus.slice(0, 40));
    const whole = readRecording(bytes);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), (pieceBytes) => {
        expect(readRecording(bytes, pieceBytes)).toEqual(whole);
      }),
    );
  });

  test('a file cut off in the middle keeps what is whole, and says so', () => {
    const bytes = pcapBytes(bus.slice(0, 10));
    const { counts } = readRecording(bytes.subarray(0, bytes.length - 5));
    expect(counts).toMatchObject({ frames: 9, comments: 0, broken: 0, cutShort: true });
  });

  test('a record that claims four gigabytes ends the reading, not the program', () => {
    const bytes = pcapBytes(bus.slice(0, 10));
    new DataView(bytes.buffer).setUint32(24 + 5 * 32 + 8, 0xffff_ffff, true);
    expect(readRecording(bytes).counts).toMatchObject({ frames: 5, comments: 0, broken: 1, cutShort: true });
  });

  test('a record whose length byte does not fit is left out and the next is read', () => {
    const bytes = pcapBytes(bus.slice(0, 10));
    bytes[24 + 5 * 32 + 20] = 64;
    expect(readRecording(bytes).counts).toMatchObject({ frames: 9, comments: 0, broken: 1, cutShort: false });
  });

  test('remote frames, faults and 11-bit identifiers are told apart by their flags', () => {
    const bytes = pcapBytes(bus.slice(0, 3));
    const view = new DataView(bytes.buffer);
    view.setUint32(24 + 16, 0xc9f8_012b, false);
    view.setUint32(24 + 32 + 16, 0x2000_0004, false);
    view.setUint32(24 + 64 + 16, 0x0000_0123, false);
    const { frames } = readRecording(bytes);
    expect(frames[0]).toMatchObject({ remote: true, extended: true, id: 0x09f8012b });
    expect(frames[1]).toMatchObject({ error: true, id: 4 });
    expect(frames[2]).toMatchObject({ extended: false, id: 0x123, error: false, remote: false });
  });

  test('a file of another network is refused with its link type', () => {
    const bytes = pcapBytes(bus.slice(0, 1));
    new DataView(bytes.buffer).setUint32(20, 1, true);
    expect(() => readRecording(bytes)).toThrow(UserError);
    expect(() => readRecording(bytes)).toThrow('link type 1)');
  });
});
