import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { recordBus } from '../../../../tests/recordings/invented-bus.ts';
import { readRecording } from '../../../../tests/recordings/read-recording.ts';
import { candumpBytes, garbage } from '../../../../tests/recordings/write-recording.ts';

const bus = recordBus({ seconds: 2 });
const wanted = bus.map(({ id, data, timeUs }) => ({ id, data: [...data], timeUs }));
const read = (text: string) => readRecording(garbage(text));

describe('candump text', () => {
  test.each(['log', 'log-bare'] as const)('every frame of the %s form comes back with its time', (style) => {
    const { frames, counts } = readRecording(candumpBytes(bus, { style }));
    expect(frames.map(({ id, data, timeUs }) => ({ id, data, timeUs }))).toEqual(wanted);
    expect(counts).toMatchObject({ frames: bus.length, comments: 0, broken: 0, cutShort: false });
  });

  test.each(['old-angle', 'old-columns'] as const)('every frame of the %s form comes back, without time', (style) => {
    const { frames } = readRecording(candumpBytes(bus, { style, lineEnd: '\r\n' }));
    expect(frames.map(({ id, data }) => ({ id, data }))).toEqual(wanted.map(({ id, data }) => ({ id, data })));
    expect(frames.every((frame) => frame.timeUs === undefined)).toBe(true);
  });

  test('the recording may be cut into pieces anywhere', () => {
    const bytes = candumpBytes(bus.slice(0, 40));
    const whole = readRecording(bytes);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), (pieceBytes) => {
        expect(readRecording(bytes, pieceBytes)).toEqual(whole);
      }),
    );
  });

  test.each([
    [
      'a time and columns',
      '(1.5)  can0  09F8027F   [2]  00 FC',
      { timeUs: 1_500_000, id: 0x09f8027f, data: [0, 0xfc] },
    ],
    ['small letters', '(1.000001) can0 09f8027f#00fc', { timeUs: 1_000_001, id: 0x09f8027f, data: [0, 0xfc] }],
    ['nanoseconds', '(1.000001999) can0 09F8027F#00', { timeUs: 1_000_001, data: [0] }],
    ['no interface in columns', '09F8027F   [2]  00 FC', { timeUs: undefined, data: [0, 0xfc] }],
    ['an 11-bit identifier', '(1.0) can0 123#11', { id: 0x123, extended: false, data: [0x11] }],
    ['no data', '(1.0) can0 09F8027F#', { length: 0, data: [] }],
    ['dots between bytes', '(1.0) can0 09F8027F#00.FC.01', { data: [0, 0xfc, 1] }],
    ['a word behind', '(1.0) can0 09F8027F#00FC R', { data: [0, 0xfc] }],
    ['letters behind columns', "can0  09F8027F   [2]  30 31   '01'", { data: [0x30, 0x31] }],
    ['a remote frame', '(1.0) can0 09F8027F#R3', { remote: true, length: 3, data: [] }],
    ['a remote frame in columns', 'can0  09F8027F   [3]  remote request', { remote: true, length: 3 }],
    ['a fault on the bus', '(1.0) can0 20000004#0000000000000000', { error: true, id: 4 }],
    ['no line end', '(1.0) can0 09F8027F#00FC', { data: [0, 0xfc] }],
  ])('a line with %s is understood', (_what, line, expected) => {
    const { frames, counts } = read(line);
    expect(counts).toMatchObject({ frames: 1, broken: 0 });
    expect(frames[0]).toMatchObject(expected);
  });

  test.each([
    ['nine data bytes', '(1.0) can0 09F8027F#000102030405060708'],
    ['half a byte', '(1.0) can0 09F8027F#000'],
    ['a letter that is no digit', '(1.0) can0 09F8027F#00G0'],
    ['seven digits of identifier', '(1.0) can0 9F8027F#00'],
    ['an identifier of 30 bits', '(1.0) can0 40000000#00'],
    ['an 11-bit identifier over 7FF', '(1.0) can0 800#00'],
    ['a longer frame of another network', '(1.0) can0 09F8027F##000'],
    ['fewer bytes than it says', 'can0  09F8027F   [3]  00 FC'],
    ['more bytes than a frame has', 'can0  09F8027F   [9]  00 01 02 03 04 05 06 07 08'],
    ['a time without end', '(1.0 can0 09F8027F#00'],
    ['an empty time', '() can0 09F8027F#00'],
    ['plain words', 'interface = can0, family = 29'],
  ])('a line with %s is counted as broken and the next is read', (_what, line) => {
    const { frames, counts } = read(`${line}\n(2.0) can0 09F8027F#00FC\n`);
    expect(counts).toMatchObject({ frames: 1, broken: 1 });
    expect(frames[0]).toMatchObject({ timeUs: 2_000_000 });
  });

  test('comments and empty lines are neither frames nor broken', () => {
    const { counts } = read('# a head\n\n   \r\n(1.0) can0 09F8027F#00\n# end');
    expect(counts).toMatchObject({ frames: 1, comments: 2, broken: 0, cutShort: false });
  });

  test('a line without end does not fill the memory', () => {
    const { counts } = readRecording(garbage(`${'x'.repeat(300_000)}\n(1.0) can0 09F8027F#00\n`), 1000);
    expect(counts).toMatchObject({ frames: 1, broken: 1 });
  });
});
