import { expect, test } from 'vitest';
import { depthWords, headingWords, windWords } from './nautical-words.ts';
import { valuesOf, valueWords } from './told-values.ts';

const bytesOf = (hex: string): Uint8Array =>
  Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
const wordsOf = (pgn: number, hex: string) => valueWords(pgn, valuesOf(pgn, bytesOf(hex)));

test.each([
  ['MS-62: a magnetic heading', 127_250, 'FF725AFF7FFF7FFD', '132.7° magnetic, variation not told'],
  [
    'MS-63: a heading with deviation and variation, true = sensor + deviation + variation',
    127_250,
    'FFB88897FC9C01FD',
    '200.5° magnetic, with deviation 5.0° W and variation 2.4° E 197.9° true',
  ],
  [
    'MS-64: a depth with its offset',
    128_267,
    '21D204000056FAFF',
    '12.34 m below the transducer, 10.89 m below the keel',
  ],
  ['MS-66: a depth without echo', 128_267, '00FFFFFFFF0000FF', undefined],
  ['MS-67: apparent wind', 130_306, '000403E5BEFAFFFF', '15.0 kn, 80.0° to port'],
  ['MS-69: a course and speed over ground', 129_026, '05FCB87A5E01FFFF', '6.8 kn, 180.0° true'],
  ['MS-71: a battery', 127_508, '01FE0483FF777409', '12.78 V, -12.5 A, 25.0 °C'],
])('%s is told as a person would (CANboat database)', (_what, pgn, hex, words) => {
  expect(wordsOf(pgn, hex)).toBe(words);
});

test('a position is told to nobody', () => {
  expect(wordsOf(129_025, '3ED060207948F7F9')).toBeUndefined();
  expect(valuesOf(129_025, bytesOf('3ED060207948F7F9'))).toEqual({});
});

test('a heading says what it is measured from, and a true one needs no variation', () => {
  expect(headingWords({ heading: 1, reference: 0, variation: 0.1 })).toBe('57.3° true');
  expect(headingWords({ heading: 1 })).toBe('57.3° of no told reference');
  expect(headingWords({ heading: 6.2, reference: 1, variation: 0.2 })).toContain('variation 11.5° E 6.7° true');
});

test('a depth to the waterline is deeper than below the transducer; an offset left at zero is told as not set', () => {
  expect(depthWords({ depth: 3, offset: 0.6 })).toBe('3.00 m below the transducer, 3.60 m below the waterline');
  expect(depthWords({ depth: 3, offset: 0 })).toBe('3.00 m below the transducer, offset not set');
  expect(depthWords({ depth: 3 })).toBe('3.00 m below the transducer, offset not set');
});

test('wind comes from ahead, from a side, from astern, or from a bearing where it is measured from north', () => {
  const at = (windAngle: number, reference = 2) => windWords({ windAngle, reference });
  expect([at(0), at(1), at(Math.PI), at(6)]).toEqual([
    'from ahead',
    '57.3° to starboard',
    'from astern',
    '16.2° to port',
  ]);
  expect(at(1, 0)).toBe('from 57.3° true');
  expect(at(1, 1)).toBe('from 57.3° magnetic');
});
