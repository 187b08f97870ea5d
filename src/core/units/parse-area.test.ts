import { expect, test } from 'vitest';
import { parseArea } from './parse-area.ts';

test.each([
  ['16', 16],
  ['2,5 mm²', 2.5],
  ['35 mm2', 35],
  // ASTM B258: AWG 6 is 13.30 mm², 10 is 5.261, 2/0 is 67.43, 4/0 is 107.2
  ['AWG 6', 13.3],
  ['10 awg', 5.26],
  ['2/0 AWG', 67.4],
  ['AWG 4/0', 107],
] as const)('%s is %d mm²', (text, areaMm2) => {
  expect(parseArea(text)).toBe(areaMm2);
});

test.each(['', 'thick', '0', '-4', '5/0 AWG', '16 mm'])('%j is no size of a wire', (text) => {
  expect(parseArea(text)).toBeUndefined();
});
