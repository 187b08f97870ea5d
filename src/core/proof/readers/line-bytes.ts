/** What a step of a line’s reading returns when the text is not what it reads. */
export const none = -1;

/** Bytes with a meaning in the lines of a recording. */
export const byteOf = {
  tab: 9,
  lineFeed: 10,
  carriageReturn: 13,
  space: 32,
  exclamation: 33,
  hash: 35,
  dollar: 36,
  openRound: 40,
  closeRound: 41,
  star: 42,
  comma: 44,
  hyphen: 45,
  point: 46,
  zero: 48,
  colon: 58,
  openAngle: 60,
  closeAngle: 62,
  capitalR: 82,
  capitalT: 84,
  capitalZ: 90,
  openSquare: 91,
  backslash: 92,
  closeSquare: 93,
  smallR: 114,
  smallX: 120,
} as const;

const noDigit = 255;

const digitOf = ((): Uint8Array => {
  const table = new Uint8Array(256).fill(noDigit);
  for (let digit = 0; digit < 10; digit += 1) table[byteOf.zero + digit] = digit;
  for (let digit = 10; digit < 16; digit += 1) {
    table[0x41 + digit - 10] = digit;
    table[0x61 + digit - 10] = digit;
  }
  return table;
})();

/** Worth of the hexadecimal digit at a position; 255 where none stands. */
export const hexAt = (bytes: Uint8Array, at: number): number => digitOf[bytes[at] ?? 0] ?? noDigit;

/** Whether a byte is a space or a tab. */
export const isBlank = (byte: number | undefined): boolean => byte === byteOf.space || byte === byteOf.tab;

/** Whether a byte ends the words of a line. */
export const isLineEnd = (byte: number | undefined): boolean =>
  byte === byteOf.lineFeed || byte === byteOf.carriageReturn;

/** Position of the first byte that is no space or tab. */
export const skipBlanks = (bytes: Uint8Array, from: number): number => {
  let at = from;
  while (isBlank(bytes[at])) at += 1;
  return at;
};
