import { expect, test } from 'vitest';
import { kindWord, partOf, partReader } from './message-part.ts';

const partsOf = (pgn: number, ...bytes: number[]) => partOf(partReader(pgn)(Uint8Array.from(bytes)));

test('a tank says its number and what is in it in one byte', () => {
  expect(partsOf(127_505, 0x52, 0, 0, 0, 0, 0, 0, 0xff)).toEqual({ instance: 2, kind: 5 });
  expect(kindWord({ pgn: 127_505, kind: 5 })).toBe('Black water');
});

test('a heading and a course are kept apart by what they are measured from', () => {
  expect(partsOf(127_250, 0, 0, 0, 0, 0, 0, 0, 0xfd)).toEqual({ kind: 1 });
  expect(partsOf(129_026, 0, 0xfc, 0, 0, 0, 0, 0xff, 0xff)).toEqual({ kind: 0 });
  expect(kindWord({ pgn: 129_026, kind: 0 })).toBe('True');
});

test('an instance that stands for none is kept as sent, and a message too short to say has no part', () => {
  expect(partsOf(127_245, 255, 0, 0, 0, 0, 0, 0, 0)).toEqual({ instance: 255 });
  expect(partsOf(130_316, 0, 1)).toEqual({});
  expect(partsOf(129_025, 1, 2, 3, 4, 5, 6, 7, 8)).toEqual({});
});

test('a kind nobody has a word for has none', () => {
  expect(kindWord({ pgn: 127_505, kind: 9 })).toBeUndefined();
  expect(kindWord({ pgn: 127_508, kind: 0 })).toBeUndefined();
});
