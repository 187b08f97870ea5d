import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unstuffedBits, worstBits } from '../../traffic/frame-length.ts';
import { exactBits, type WireFrame } from './frame-bits.ts';

const frameOf = (id: number, hex: string): WireFrame => {
  const data = Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
  return { id, extended: true, remote: false, length: data.length, data };
};

/** The definition taken literally, a list of bits: slow, and written apart from the tables it is held against. */
const exactBitsByList = (frame: WireFrame): number => {
  const bits: number[] = [0];
  const put = (value: number, width: number): void => {
    for (let bit = width - 1; bit >= 0; bit -= 1) bits.push(Math.floor(value / 2 ** bit) % 2);
  };
  if (frame.extended) {
    put(Math.floor(frame.id / 2 ** 18), 11);
    bits.push(1, 1);
    put(frame.id % 2 ** 18, 18);
    bits.push(frame.remote ? 1 : 0, 0, 0);
  } else {
    put(frame.id, 11);
    bits.push(frame.remote ? 1 : 0, 0, 0);
  }
  put(frame.length, 4);
  if (!frame.remote) for (const byte of frame.data.subarray(0, frame.length)) put(byte, 8);
  let crc = 0;
  for (const bit of bits) {
    const feedback = bit !== Math.floor(crc / 0x4000);
    crc = (crc % 0x4000) * 2;
    if (feedback) crc ^= 0x4599;
  }
  put(crc, 15);
  let stuffed = 0;
  let last = -1;
  let run = 0;
  for (const bit of bits) {
    run = bit === last ? run + 1 : 1;
    last = bit;
    if (run < 5) continue;
    stuffed += 1;
    last = 1 - bit;
    run = 1;
  }
  return bits.length + stuffed + 13;
};

describe('length of a frame', () => {
  test('MS-14: 29-bit identifier, 0 to 8 data bytes (Davis, Burns, Bril, Lukkien 2007, Real-Time Systems 35:239-272)', () => {
    const counts = [0, 1, 2, 3, 4, 5, 6, 7, 8];
    expect(counts.map((n) => unstuffedBits(n))).toEqual([67, 75, 83, 91, 99, 107, 115, 123, 131]);
    expect(counts.map((n) => worstBits(n))).toEqual([80, 90, 100, 110, 120, 130, 140, 150, 160]);
  });

  test('MS-15: 11-bit identifier, 0, 1 and 8 data bytes (Davis, Burns, Bril, Lukkien 2007, Real-Time Systems 35:239-272)', () => {
    expect([0, 1, 8].map((n) => unstuffedBits(n, false))).toEqual([47, 55, 111]);
    expect([0, 1, 8].map((n) => worstBits(n, false))).toEqual([55, 65, 135]);
  });

  test('MS-16: eight bytes at 250 kbit/s take 0.640 ms at worst and 0.524 ms unstuffed', () => {
    expect(worstBits(8) / 250).toBeCloseTo(0.64, 6);
    expect(unstuffedBits(8) / 250).toBeCloseTo(0.524, 6);
  });

  test('BB-45: a bus carries 1562.5 full frames a second at worst, 1908.4 unstuffed (Microchip DS70074C p 26-21; Davis and others 2007)', () => {
    expect([unstuffedBits(8), worstBits(8)]).toEqual([131, 160]);
    expect(250_000 / worstBits(8)).toBeCloseTo(1562.5, 6);
    expect(250_000 / unstuffedBits(8)).toBeCloseTo(1908.4, 1);
  });

  test.each([
    ['MS-17', 0x09f112cc, 'FF725AFF7FFF7FFD', 141],
    ['MS-18', 0x00000000, '0000000000000000', 150],
    ['MS-20', 0x18eafffe, '00EE00', 98],
    ['MS-21', 0x09f80205, 'AAAAAAAAAAAAAAAA', 134],
    ['MS-23', 0x18eeff05, '0102030405060708', 142],
  ])('%s: exact length with stuff bits and CRC-15 (ISO 11898-1 bit layout)', (_id, id, hex, bits) => {
    expect(exactBits(frameOf(id, hex))).toBe(bits);
    expect(exactBitsByList(frameOf(id, hex))).toBe(bits);
  });

  test('any frame is as long as the bits written one by one, and between unstuffed and worst', () => {
    const anyFrame = fc.record({
      id: fc.integer({ min: 0, max: 0x1fff_ffff }),
      extended: fc.boolean(),
      remote: fc.boolean(),
      data: fc.uint8Array({ minLength: 0, maxLength: 8 }),
    });
    fc.assert(
      fc.property(anyFrame, ({ id, extended, remote, data }) => {
        const frame = { id: extended ? id : id & 0x7ff, extended, remote, length: data.length, data };
        const bits = exactBits(frame);
        const dataBytes = remote ? 0 : data.length;
        expect(bits).toBe(exactBitsByList(frame));
        expect(bits).toBeGreaterThanOrEqual(unstuffedBits(dataBytes, extended));
        expect(bits).toBeLessThanOrEqual(worstBits(dataBytes, extended));
      }),
    );
  });
});
