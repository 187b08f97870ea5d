/** Bits of an AIS message, counted from its first, most significant first. */
export interface AisBits {
  readonly length: number;
  /** an unsigned number of at most 32 bits; undefined where the message is too short for it */
  number(from: number, bits: number): number | undefined;
  signed(from: number, bits: number): number | undefined;
  /** a text of six-bit characters, without what pads it; undefined where there is none */
  text(from: number, bits: number): string | undefined;
}

const bitsInChar = 6;

/** Worth of one character of the armour: 48 to 87 and 96 to 119, less 48, and less 8 more above the gap. */
const worthOf = (code: number): number | undefined => {
  if (code >= 48 && code < 88) return code - 48;
  return code >= 96 && code < 120 ? code - 56 : undefined;
};

/** The characters of a text: @ A–Z [ \ ] ^ _ and then space to ?. */
const charOf = (value: number): string => String.fromCharCode(value < 32 ? value + 64 : value);

const textOf = (values: readonly number[]): string | undefined => {
  const end = values.indexOf(0);
  const text = (end < 0 ? values : values.slice(0, end)).map(charOf).join('').trimEnd();
  return text === '' ? undefined : text;
};

/**
 * The bits in the payload of a VDM or VDO sentence (source: memory-ais-layout). Undefined when a character is none of
 * the armour’s, or when more bits are padding than a character has.
 */
export const aisBits = (payload: string, padBits: number): AisBits | undefined => {
  const worths: number[] = [];
  for (let at = 0; at < payload.length; at += 1) {
    const worth = worthOf(payload.charCodeAt(at));
    if (worth === undefined) return undefined;
    worths.push(worth);
  }
  if (padBits < 0 || padBits >= bitsInChar) return undefined;
  const length = Math.max(0, worths.length * bitsInChar - padBits);

  const number = (from: number, bits: number): number | undefined => {
    if (from + bits > length) return undefined;
    let value = 0;
    for (let at = from; at < from + bits; at += 1) {
      const worth = worths[Math.floor(at / bitsInChar)] ?? 0;
      value = value * 2 + ((worth >> (bitsInChar - 1 - (at % bitsInChar))) & 1);
    }
    return value;
  };

  return {
    length,
    number,
    signed(from, bits) {
      const value = number(from, bits);
      return value === undefined || value < 2 ** (bits - 1) ? value : value - 2 ** bits;
    },
    text(from, bits) {
      const values: number[] = [];
      // The last characters of a message that was cut short by its sender are simply not there.
      for (let at = from; at + bitsInChar <= Math.min(from + bits, length); at += bitsInChar)
        values.push(number(at, bitsInChar) ?? 0);
      return textOf(values);
    },
  };
};
