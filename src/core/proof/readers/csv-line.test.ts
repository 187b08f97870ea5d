import { describe, expect, test } from 'vitest';
import { recordBus } from '../../../../tests/recordings/invented-bus.ts';
import { readRecording } from '../../../../tests/recordings/read-recording.ts';
import { csvBytes, garbage } from '../../../../tests/recordings/write-recording.ts';

const bus = recordBus({ seconds: 2 });
const read = (text: string) => readRecording(garbage(text));
const heading = 'ff,72,5a,ff,7f,ff,7f,fd';

describe('comma-separated lines: time, priority, PGN, source, destination, length, bytes', () => {
  test.each([
    { between: 'T', millis: true },
    { between: '-', millis: true },
    { between: 'T', millis: false },
    { between: '-', millis: false },
  ] as const)('every frame comes back with the time its stamp tells: %j', (form) => {
    const { frames, counts } = readRecording(csvBytes(bus, form));
    const stepUs = form.millis ? 1000 : 1_000_000;
    expect(frames.map(({ id, data, timeUs }) => ({ id, data, timeUs }))).toEqual(
      bus.map(({ id, data, timeUs }) => ({ id, data: [...data], timeUs: Math.floor(timeUs / stepUs) * stepUs })),
    );
    expect(counts).toMatchObject({ frames: bus.length, messages: 0, broken: 0 });
  });

  test('a line of more than eight bytes is a message joined already, between frames that are not', () => {
    const joined = '00,01,02,03,04,05,06,07,08,09,0a,0b,0c';
    const { frames, messages, counts } = read(
      `2026-05-01T10:00:00.250Z,2,127250,35,255,8,${heading}\n2026-05-01-10:00:00.300,6,129038,43,255,13,${joined}\n`,
    );
    expect(counts).toMatchObject({ frames: 1, messages: 1, broken: 0 });
    expect(frames[0]).toMatchObject({ id: 0x09f11223, timeUs: 1_777_629_600_250_000 });
    expect(messages[0]).toEqual({
      timeUs: 1_777_629_600_300_000,
      priority: 6,
      pgn: 129_038,
      source: 43,
      destination: 255,
      data: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12],
    });
  });

  test('a short line of a number that is sent in frames is a message too: each of its frames would have eight bytes', () => {
    const { messages } = read('2026-05-01T10:00:00Z,6,127507,50,255,6,01,00,ff,ff,ff,ff\n');
    expect(messages).toMatchObject([{ pgn: 127_507, data: [1, 0, 255, 255, 255, 255] }]);
  });

  test('a short last frame of a long message stays a frame, where frames came before and nothing joined', () => {
    const line = (hex: string) => `2026-05-01T10:00:00Z,6,126998,50,255,${hex.split(',').length},${hex}\n`;
    const text = line('00,09,03,01,41,02,01,04') + line('01,01,42,43');
    expect(read(text)).toMatchObject({ counts: { frames: 2, messages: 0 } });
    const joined = '2026-05-01T10:00:00Z,6,126998,50,255,9,03,01,41,02,01,04,01,42,43\n';
    expect(read(joined + text).counts).toMatchObject({ frames: 1, messages: 2 });
  });

  test('what a recorder notes of its own interface, from number 262144 on, is dropped and counted', () => {
    const { counts } = read('2026-05-01T10:00:00Z,7,262400,0,255,3,01,02,03\n');
    expect(counts).toMatchObject({ frames: 0, messages: 0, broken: 0, recorderNotes: 1 });
  });

  test('seconds since 1970 and blanks behind commas are understood', () => {
    const { frames } = read(`1777629600.25, 2, 127250, 35, 255, 8, ${heading}\r\n`);
    expect(frames[0]).toMatchObject({ id: 0x09f11223, timeUs: 1_777_629_600_250_000 });
  });

  test.each([
    ['a month 13', `2026-13-01T10:00:00Z,2,127250,35,255,8,${heading}`],
    ['a clock at 25', `2026-05-01T25:00:00Z,2,127250,35,255,8,${heading}`],
    ['a priority of 8', `2026-05-01T10:00:00Z,8,127250,35,255,8,${heading}`],
    ['an address of 256', `2026-05-01T10:00:00Z,2,127250,256,255,8,${heading}`],
    ['fewer bytes than it says', `2026-05-01T10:00:00Z,2,127250,35,255,8,${heading.slice(0, -3)}`],
    ['more bytes than it says', `2026-05-01T10:00:00Z,2,127250,35,255,8,${heading},00`],
    ['half a byte', `2026-05-01T10:00:00Z,2,127250,35,255,8,${heading.slice(0, -1)}`],
    ['more bytes than any message', `2026-05-01T10:00:00Z,2,127250,35,255,1786,${heading}`],
    ['no time', `2,127250,35,255,8,${heading}`],
  ])('a line with %s is counted as broken, with its number and its beginning', (_what, line) => {
    const { counts } = read(`# head\n${line}\n`);
    expect(counts).toMatchObject({ frames: 0, messages: 0, broken: 1 });
    expect(counts.brokenAt[0]?.line).toBe(2);
    expect(line.startsWith(counts.brokenAt[0]?.says.replace('…', '') ?? 'x')).toBe(true);
  });
});
