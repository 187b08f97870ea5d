import { uint16At, uint32At } from './file-words.ts';

/** One interface of a capture: the network it was on and the step of its clock. */
export interface CapturedInterface {
  readonly link: number;
  /** bytes kept of each packet; 0 = all */
  readonly snapBytes: number;
  readonly timeUsOf: (high: number, low: number) => number;
}

const word = 2 ** 32;
const resolutionOption = 9;
const offsetOption = 14;
const usualDigits = 6;
const mostDigits = 12;

/**
 * Microseconds of a time of 64 bits in steps of 10^-digits s. Above six digits the high word is divided first, so that
 * no product is larger than a double holds exactly.
 */
const decimalTime = (digits: number): CapturedInterface['timeUsOf'] => {
  if (digits <= usualDigits) {
    const stepUs = 10 ** (usualDigits - digits);
    return (high, low) => (high * word + low) * stepUs;
  }
  const stepsInUs = 10 ** (Math.min(digits, mostDigits) - usualDigits);
  return (high, low) => Math.floor(high / stepsInUs) * word + Math.floor(((high % stepsInUs) * word + low) / stepsInUs);
};

const binaryTime = (bits: number): CapturedInterface['timeUsOf'] => {
  const stepUs = 1_000_000 / 2 ** bits;
  return (high, low) => Math.floor((high * word + low) * stepUs);
};

/** The values of the options from a position on, by number. */
const optionsAt = (body: Uint8Array, from: number, little: boolean): ReadonlyMap<number, Uint8Array> => {
  const found = new Map<number, Uint8Array>();
  let at = from;
  while (at + 4 <= body.length) {
    const code = uint16At(body, at, little);
    const length = uint16At(body, at + 2, little);
    if (code === 0 || at + 4 + length > body.length) break;
    found.set(code, body.subarray(at + 4, at + 4 + length));
    at += 4 + Math.ceil(length / 4) * 4;
  }
  return found;
};

/** Seconds added to every time of the interface: 64 bits with a sign. */
const offsetUs = (value: Uint8Array | undefined, little: boolean): number => {
  if (value === undefined || value.length < 8) return 0;
  const high = uint32At(value, little ? 4 : 0, little) | 0;
  return (high * word + uint32At(value, little ? 0 : 4, little)) * 1_000_000;
};

/** Reads the body of an interface description; undefined when it is too short for one. */
export const readInterface = (body: Uint8Array, little: boolean): CapturedInterface | undefined => {
  if (body.length < 8) return undefined;
  const options = optionsAt(body, 8, little);
  const resolution = options.get(resolutionOption)?.[0] ?? usualDigits;
  const step = resolution >= 0x80 ? binaryTime(resolution & 0x7f) : decimalTime(resolution);
  const addedUs = offsetUs(options.get(offsetOption), little);
  return {
    link: uint16At(body, 0, little),
    snapBytes: uint32At(body, 4, little),
    timeUsOf: (high, low) => step(high, low) + addedUs,
  };
};
