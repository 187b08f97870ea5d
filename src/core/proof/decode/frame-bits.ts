/** A frame as it stood on the wire. */
export interface WireFrame {
  readonly id: number;
  /** 29-bit identifier; otherwise 11 bits */
  readonly extended: boolean;
  readonly remote: boolean;
  /** data bytes, 0 to 8 */
  readonly length: number;
  readonly data: Uint8Array;
}

/** CRC delimiter 1, acknowledge 2, end of frame 7, space between frames 3: never stuffed. */
const tailBits = 13;
const crcBits = 15;
const crcPolynomial = 0x4599;

// The bits are fed by the byte. A state is the last bit and how often it stood in a row (1 to 4), packed as
// bit * 4 + run - 1; two more states skip the bits in front of the start bit, because 39 and 19 bits fill no whole byte.
const skipOne = 8;
const skipFive = 9;
const runLimit = 5;

interface Walk {
  state: number;
  stuffed: number;
}

const feedBit = (walk: Walk, bit: number, fresh: boolean): void => {
  const lastBit = walk.state >> 2;
  const run = fresh || bit !== lastBit ? 1 : (walk.state & 3) + 2;
  if (run < runLimit) {
    walk.state = bit * 4 + run - 1;
    return;
  }
  // The stuff bit is the opposite one and starts a new run itself.
  walk.stuffed += 1;
  walk.state = (1 - bit) * 4;
};

/** Next state + 16 x stuff bits, for every state and every group of `width` bits. */
const stuffTable = (width: number): Uint8Array => {
  const table = new Uint8Array(10 << width);
  for (let from = 0; from < 10; from += 1) {
    const skipped = from === skipOne ? 1 : from === skipFive ? 5 : 0;
    for (let bits = 0; bits < 1 << width; bits += 1) {
      const walk = { state: from, stuffed: 0 };
      for (let at = skipped; at < width; at += 1) {
        feedBit(walk, (bits >> (width - 1 - at)) & 1, skipped > 0 && at === skipped);
      }
      table[(from << width) | bits] = walk.state + 16 * walk.stuffed;
    }
  }
  return table;
};

const stuffBy8 = stuffTable(8);
const stuffBy7 = stuffTable(7);

const crcTable = ((): Uint16Array => {
  const table = new Uint16Array(256);
  for (let byte = 0; byte < 256; byte += 1) {
    let crc = byte << 7;
    for (let bit = 0; bit < 8; bit += 1) crc = (crc << 1) ^ (crc & 0x4000 ? crcPolynomial : 0);
    table[byte] = crc & 0x7fff;
  }
  return table;
})();

const at = (table: Uint8Array | Uint16Array, index: number): number => table[index] ?? 0;

/** The frame from start bit to length code, in whole bytes with 1 or 5 zero bits in front. */
const header = new Uint8Array(5);

const fillHeader = ({ id, extended, remote, length }: WireFrame): number => {
  const last = (remote ? 0x40 : 0) | (length & 0xf);
  if (!extended) {
    header[0] = (id >>> 9) & 3;
    header[1] = (id >>> 1) & 0xff;
    header[2] = ((id & 1) << 7) | last;
    return 3;
  }
  header[0] = (id >>> 23) & 0x3f;
  header[1] = (((id >>> 18) & 0x1f) << 3) | 6 | ((id >>> 17) & 1);
  header[2] = (id >>> 9) & 0xff;
  header[3] = (id >>> 1) & 0xff;
  header[4] = ((id & 1) << 7) | last;
  return 5;
};

/**
 * Exact length in bits of a recorded frame, 3 bits of space included: start bit, identifier, length code, data and
 * CRC-15 (polynomial 0x4599, start 0) with an opposite bit after every 5 equal ones, then 13 bits (source: iso-11898).
 */
export const exactBits = (frame: WireFrame): number => {
  const headerBytes = fillHeader(frame);
  const dataBytes = frame.remote ? 0 : frame.length;
  let state = frame.extended ? skipOne : skipFive;
  let stuffed = 0;
  let crc = 0;
  for (let index = 0; index < headerBytes + dataBytes; index += 1) {
    const byte = index < headerBytes ? at(header, index) : at(frame.data, index - headerBytes);
    // Zero bits in front leave a CRC that starts at zero as it is.
    crc = ((crc << 8) & 0x7fff) ^ at(crcTable, ((crc >> 7) ^ byte) & 0xff);
    const step = at(stuffBy8, (state << 8) | byte);
    state = step & 15;
    stuffed += step >> 4;
  }
  const high = at(stuffBy8, (state << 8) | (crc >> 7));
  const low = at(stuffBy7, ((high & 15) << 7) | (crc & 0x7f));
  stuffed += (high >> 4) + (low >> 4);
  const headerBits = headerBytes * 8 - (frame.extended ? 1 : 5);
  return headerBits + dataBytes * 8 + crcBits + stuffed + tailBits;
};
