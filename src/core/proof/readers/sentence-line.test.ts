import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readRecording } from '../../../../tests/recordings/read-recording.ts';
import { garbage } from '../../../../tests/recordings/write-recording.ts';

const read = (text: string) => readRecording(garbage(text));
const depth = '$SDDPT,12.3,-1.5*4E';
const wind = '$IIMWV,338,R,13.41,N,A*2C';
const noonUs = Date.UTC(2026, 4, 1, 12, 0, 0, 250) * 1000;
const tags = (body: string): string => {
  const sum = [...body].reduce((sofar, char) => sofar ^ char.charCodeAt(0), 0);
  return `\\${body}*${sum.toString(16).padStart(2, '0')}\\`;
};

describe('NMEA 0183 text', () => {
  test('sentences come back as they stand, with LF or CR LF, between comments', () => {
    const { sentences, counts } = read(`# a boat\r\n${depth}\r\n\r\n${wind}\n!AIVDM,1,1,,A,1,0*00\n`);
    expect(sentences).toEqual([
      { timeUs: undefined, text: depth, checksum: 'right', chars: 21 },
      { timeUs: undefined, text: wind, checksum: 'right', chars: 27 },
      { timeUs: undefined, text: '!AIVDM,1,1,,A,1,0*00', checksum: 'wrong', chars: 22 },
    ]);
    expect(counts).toMatchObject({ sentences: 3, comments: 1, broken: 0, noiseBytes: 0 });
  });

  test.each([
    ['seconds since 1970', `1777636800.250 ${depth}`],
    ['milliseconds since 1970', `1777636800250,${depth}`],
    ['a date', `2026-05-01T12:00:00.250Z ${depth}`],
    ['a date with a blank', `2026-05-01 12:00:00.25: ${depth}`],
    ['a date of another zone', `2026-05-01T14:00:00.250+02:00\t${depth}`],
    ['brackets', `(1777636800.250000) ${depth}`],
    ['a date in brackets', `(2026-05-01 12:00:00.250000) ${depth}`],
    ['a tag block', `${tags('s:GP01,c:1777636800250')}${depth}`],
  ])('a stamp in front, as %s, is its time', (_what, line) => {
    const { sentences, counts } = read(`${line}\n`);
    expect(sentences).toMatchObject([{ timeUs: noonUs, text: depth, checksum: 'right' }]);
    expect(counts.noiseBytes).toBe(0);
  });

  test('a tag block names the talker’s source; one whose checksum is wrong says nothing', () => {
    expect(read(`${tags('g:1-2-77,s:r3,c:1777636800')}${depth}\n`).sentences[0]).toMatchObject({
      from: 'r3',
      timeUs: 1_777_636_800_000_000,
    });
    expect(read(`\\s:r3,c:1777636800*00\\${depth}\n`).sentences).toEqual([
      { timeUs: undefined, text: depth, checksum: 'right', chars: 21 },
    ]);
  });

  test.each([
    ['a sentence cut off by the next', `$SDDPT,12.3${wind}`, [wind], 11],
    ['noise in front', `\x80\xff\x01${depth}`, [depth], 3],
    ['two sentences on one line', `${depth}${wind}`, [depth, wind], 0],
    ['the wreck of one between two', `${depth}$IIMW${wind}`, [depth, wind], 5],
  ])('%s: what is whole is read, the rest is counted as noise', (_what, line, texts, noiseBytes) => {
    const { sentences, counts } = read(`${line}\n`);
    expect(sentences.map(({ text }) => text)).toEqual(texts);
    expect(counts).toMatchObject({ broken: 0, noiseBytes });
  });

  test.each([
    '$',
    '$*00',
    '$,,*2C',
    '$IIMWV',
    'IIMWV,338*00',
    '$SDDPT,12.3*4',
    '$SDDPT,12.3*4E7',
    '$SDDPT,\x80',
    '$a price',
  ])('a line of %j is broken, and its bytes are noise', (line) => {
    const { counts } = read(`${line}\n${depth}\n`);
    expect(counts).toMatchObject({ sentences: 1, broken: 1, noiseBytes: line.length });
  });

  test('what stands in a broken line is shown escaped and short', () => {
    const { counts } = read(`\x1b[31m\x80${'x'.repeat(60)}\n`);
    expect(counts.brokenAt).toEqual([{ line: 1, says: `\\x1b[31m\\x80${'x'.repeat(34)}…` }]);
  });

  test('sentences and frames may stand in one recording', () => {
    const { frames, sentences, counts } = read(`(1.0) can0 09F8027F#00FC\n(1.5) ${depth}\n`);
    expect([frames.length, sentences[0]?.timeUs, counts.broken]).toEqual([1, 1_500_000, 0]);
  });

  test('after any noise the next whole line is read', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), fc.integer({ min: 1, max: 50 }), (noise, pieceBytes) => {
        const text = garbage(`# start of a recording that is text\n`.repeat(20));
        const tail = garbage(`\n${depth}\n`);
        const { sentences } = readRecording(Uint8Array.from([...text, ...noise, ...tail]), pieceBytes);
        expect(sentences.at(-1)).toMatchObject({ text: depth, checksum: 'right' });
      }),
    );
  });
});
