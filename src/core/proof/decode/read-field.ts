import type { MessageField } from '../../facts/message-fields.ts';

/** Values of one message by field, in the units of the database (m, rad, m/s, K, Pa, V, A, %); absent = no value. */
export type FieldValues = Readonly<Partial<Record<string, number>>>;

/** Bits of a payload as an unsigned whole number, least significant first; at most 32, all of them present. */
export const bitsAt = (payload: Uint8Array, { firstBit, bits }: { firstBit: number; bits: number }): number => {
  let value = 0;
  let scale = 1;
  let at = firstBit;
  const end = firstBit + bits;
  while (at < end) {
    const shift = at & 7;
    const taken = Math.min(8 - shift, end - at);
    const mask = (1 << taken) - 1;
    value += (((payload[at >> 3] ?? 0) >> shift) & mask) * scale;
    scale *= mask + 1;
    at += taken;
  }
  return value;
};

const word = 2 ** 32;
const lastOfWord = word - 1;
/** Codes at the top of a field of eight bits and more that are no value: not available, error, reserved. */
const codesOfNoValue = 3;

/** Whether a field of 64 bits holds one of the top codes; a double cannot tell these from the largest value. */
const isNoLongValue = (low: number, high: number, signed: boolean): boolean =>
  high === (signed ? lastOfWord >>> 1 : lastOfWord) && low > lastOfWord - codesOfNoValue;

/**
 * A reader of one field: raw x resolution + offset, in the unit of the field (source: pgn-database). Undefined where
 * the message is too short for it, or says that it has no value: not available (all ones, signed: the largest
 * positive), error, reserved, or outside what the field can mean. A field of 64 bits is good to a double.
 *
 * @example fieldReader(depthField)(payload) // 12.34
 */
export const fieldReader = (field: MessageField): ((payload: Uint8Array) => number | undefined) => {
  const { firstBit, bits, signed, resolution, offset } = field;
  const endByte = Math.ceil((firstBit + bits) / 8);
  const isLong = bits > 32;
  const lowPart = { firstBit, bits: isLong ? 32 : bits };
  const highPart = { firstBit: firstBit + 32, bits: bits - 32 };
  // Half a step: the range is written in rounded decimals, the raw number in whole steps.
  const least = field.least - resolution / 2;
  const largest = field.largest + resolution / 2;
  const topBit = 2 ** ((isLong ? bits - 32 : bits) - 1);

  return (payload) => {
    if (payload.length < endByte) return undefined;
    const low = bitsAt(payload, lowPart);
    const high = isLong ? bitsAt(payload, highPart) : 0;
    if (isLong && isNoLongValue(low, high, signed)) return undefined;
    const isNegative = signed && (isLong ? high : low) >= topBit;
    const raw = isLong ? (isNegative ? high - 2 * topBit : high) * word + low : isNegative ? low - 2 * topBit : low;
    const value = raw * resolution + offset;
    return value < least || value > largest ? undefined : value;
  };
};
