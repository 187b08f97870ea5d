import { describe, expect, test } from 'vitest';
import { byStrengthOfName, readName } from './name-field.ts';

const bytesOf = (hex: string): Uint8Array =>
  Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));

const a = 'c0789100fa01e240';
const b = '43509629ffc00001';
const c = 'cff082ff003fffff';

describe('identity of a device (ISO 11783-5 NAME layout as in the CANboat PGN database)', () => {
  test('MS-53: a GNSS receiver', () => {
    expect(readName(bytesOf('40E201FA009178C0'))).toEqual({
      hex: a,
      unique: 123_456,
      makerCode: 2000,
      deviceInstance: 0,
      functionCode: 145,
      classCode: 60,
      systemInstance: 0,
      industryGroup: 4,
      arbitraryAddress: true,
    });
  });

  test('MS-54: a pilot that keeps its address', () => {
    expect(readName(bytesOf('0100C0FF29965043'))).toEqual({
      hex: b,
      unique: 1,
      makerCode: 2046,
      deviceInstance: 41,
      functionCode: 150,
      classCode: 40,
      systemInstance: 3,
      industryGroup: 4,
      arbitraryAddress: false,
    });
  });

  test('MS-55: every field at its largest', () => {
    expect(readName(bytesOf('FFFF3F00FF82F0CF'))).toEqual({
      hex: c,
      unique: 2_097_151,
      makerCode: 1,
      deviceInstance: 255,
      functionCode: 130,
      classCode: 120,
      systemInstance: 15,
      industryGroup: 4,
      arbitraryAddress: true,
    });
  });

  test('MS-57, MS-58: the lower NAME keeps the address', () => {
    expect(byStrengthOfName(a, b)).toBe(1);
    expect(byStrengthOfName(a, c)).toBe(-1);
  });

  test('MS-60: four NAMEs, strongest first', () => {
    const d = 'c0789100fa000005';
    expect([a, b, c, d].sort(byStrengthOfName)).toEqual([b, d, a, c]);
  });

  test('a claim of fewer than eight bytes says nothing', () => {
    expect(readName(bytesOf('40E201FA009178'))).toBeUndefined();
  });
});
