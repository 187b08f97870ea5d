import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { RecordedSentence } from '../readers/recording-sink.ts';
import { type LiveLine, startLiveLines } from './live-lines.ts';

const bytesOf = (text: string): Uint8Array => Uint8Array.from(text, (char) => char.charCodeAt(0));

/** Everything a stream of pieces holds, in order. */
const read = (pieces: readonly Uint8Array[]) => {
  const sentences: RecordedSentence[] = [];
  const lines: LiveLine[] = [];
  const frames: number[] = [];
  const reader = startLiveLines({
    onFrame: ({ id }) => frames.push(id),
    onSentence: (sentence) => sentences.push(sentence),
    onLine: (line) => lines.push(line),
  });
  for (const piece of pieces) reader.push(piece);
  reader.end();
  return { frames, sentences, lines };
};

const sentencesIn = (text: string) => read([bytesOf(text)]).sentences;

test('frames, sentences and comments are told apart, line by line', () => {
  const found = read([bytesOf('(1.5) can0 09F8012B#00112233\n$SDDPT,12.3,-1.5*4E\r\n# said by hand\n\n')]);
  expect(found.lines.map(({ kind }) => kind)).toEqual(['whole', 'whole', 'comment']);
  expect(found.frames).toEqual([0x09f8_012b]);
  expect(found.sentences).toHaveLength(1);
});

test('a sentence keeps its text and the time it was stamped with', () => {
  expect(sentencesIn('(1700000000.25) $SDDPT,12.3,-1.5*4E\r\n')).toEqual([
    { text: '$SDDPT,12.3,-1.5*4E', timeUs: 1_700_000_000_250_000, checksum: 'right', chars: 21 },
  ]);
});

// MS-80
test('a sentence with a wrong checksum is damaged', () => {
  const { sentences, lines } = read([bytesOf('$SDDPT,12.3,-1.5*00\n')]);
  expect(sentences[0]?.checksum).toBe('wrong');
  expect(lines[0]?.kind).toBe('damaged');
});

test('a sentence cut off by the next one costs itself only', () => {
  expect(sentencesIn('$GPRMC,1234$SDDPT,12.3,-1.5*4E\n').map(({ text }) => text)).toEqual(['$SDDPT,12.3,-1.5*4E']);
});

test('noise before the first whole line is one line of noise, whatever its length', () => {
  const noise = new Uint8Array(10_000).fill(0xf3);
  const { lines } = read([noise, bytesOf('\n$SDDPT,12.3,-1.5*4E\n')]);
  expect(lines.map(({ kind, bytes }) => [kind, bytes])).toEqual([
    ['noise', 10_001],
    ['whole', 20],
  ]);
});

test('wherever the pieces are cut, the lines are the same and every byte is counted once', () => {
  const line = fc.constantFrom(
    '(1.5) can0 09F8012B#00112233\n',
    'can0  09F8027F   [8]  00 FC 01 02 03 04 05 06\n',
    '$SDDPT,12.3,-1.5*4E\r\n',
    '$SDDPT,12.3,-1.5*00\r\n',
    '\u00f3\u00f3\u00f3\u0000\n',
    '# note\n',
  );
  fc.assert(
    fc.property(fc.array(line), fc.array(fc.nat(40)), (texts, cuts) => {
      const bytes = bytesOf(texts.join(''));
      const pieces: Uint8Array[] = [];
      let at = 0;
      for (const cut of cuts) {
        pieces.push(bytes.subarray(at, at + cut));
        at += cut;
      }
      const whole = read([bytes]);
      expect(read([...pieces, bytes.subarray(at)])).toEqual(whole);
      expect(whole.lines.reduce((sum, one) => sum + one.bytes, 0)).toBe(bytes.length);
    }),
  );
});

test('a line the link broke in is no beginning of the next', () => {
  const lines: LiveLine[] = [];
  const frames: number[] = [];
  const reader = startLiveLines({ onFrame: ({ id }) => frames.push(id), onLine: (line) => lines.push(line) });
  reader.push(bytesOf('(1.5) can0 09F8012B#00112233\n(1.6) can0 09F8'));
  reader.cut();
  reader.cut();
  reader.push(bytesOf('(1.7) can0 09F8022B#00112233\n'));
  expect(lines.map(({ kind, bytes }) => [kind, bytes])).toEqual([
    ['whole', 29],
    ['noise', 15],
    ['whole', 29],
  ]);
  expect(frames).toEqual([0x09f8_012b, 0x09f8_022b]);
});
