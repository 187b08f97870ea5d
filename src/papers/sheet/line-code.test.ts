import { expect, test } from 'vitest';
import { codedKinds, codeOf, type LineCode, leavingCode } from './line-code.ts';

/** What is left of a stroke on a black and white copy. */
const onCopy = ({ widthMm, dashMm, doubleMm, letter }: LineCode): string => {
  const weight = widthMm >= 0.6 ? 'thick' : 'thin';
  return [weight, dashMm?.join(' ') ?? 'solid', doubleMm === undefined ? 'single' : 'double', letter ?? ''].join(', ');
};

test('every kind of line can be told from every other on a black and white copy', () => {
  const codes = [...codedKinds.map(codeOf), leavingCode];
  expect(new Set(codes.map(onCopy)).size).toBe(codes.length);
});

test('the trunk is the heaviest stroke of the sheet', () => {
  const widths = codedKinds.filter((kind) => kind !== 'trunk').map((kind) => codeOf(kind).widthMm);
  expect(Math.max(...widths)).toBeLessThan(codeOf('trunk').widthMm);
});
