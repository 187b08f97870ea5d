import { readingsOfPgn } from '../facts/message-readings.ts';
import type { ReadingId } from '../facts/reading-ids.ts';

/** Where a message says which of several things it is about (source: pgn-database). */
interface PartLayout {
  /** byte of the data instance; absent = the message has none */
  readonly instanceAt?: number;
  readonly instanceMask?: number;
  /** byte of the kind: tank contents, wind reference, temperature source */
  readonly kindAt?: number;
  readonly kindShift?: number;
  readonly kindMask?: number;
}

const instanceFirst: PartLayout = { instanceAt: 0 };
const instanceAndSource: PartLayout = { instanceAt: 1, kindAt: 2 };

const layouts: ReadonlyMap<number, PartLayout> = new Map([
  [127_245, instanceFirst],
  [127_488, instanceFirst],
  [127_489, instanceFirst],
  [127_493, instanceFirst],
  [127_497, instanceFirst],
  [127_501, instanceFirst],
  [127_503, instanceFirst],
  [127_504, instanceFirst],
  [127_505, { instanceAt: 0, instanceMask: 0x0f, kindAt: 0, kindShift: 4 }],
  [127_506, instanceAndSource],
  [127_507, instanceFirst],
  [127_508, instanceFirst],
  [127_509, instanceFirst],
  [127_513, instanceFirst],
  [127_751, { instanceAt: 1 }],
  [130_306, { kindAt: 5, kindMask: 7 }],
  [130_311, { kindAt: 1, kindMask: 0x3f }],
  [130_312, instanceAndSource],
  [130_313, instanceAndSource],
  [130_314, instanceAndSource],
  [130_316, instanceAndSource],
]);

/** One of the things a message is about: an instance, a kind, or both. */
export interface PartKey {
  readonly instance?: number;
  readonly kind?: number;
}

/** Part of a message whose number tells no parts, or that is too short to say. */
const whole = 0;

/** Tells the parts of one message number, as a whole number to look up by; 0 = the message as a whole. */
export const partReader = (pgn: number): ((payload: Uint8Array) => number) => {
  const layout = layouts.get(pgn);
  if (layout === undefined) return () => whole;
  const { instanceAt, instanceMask = 0xff, kindAt, kindShift = 0, kindMask = 0xff } = layout;
  return (payload) => {
    const instance = instanceAt === undefined ? undefined : payload[instanceAt];
    const kind = kindAt === undefined ? undefined : payload[kindAt];
    if ((instanceAt !== undefined && instance === undefined) || (kindAt !== undefined && kind === undefined))
      return whole;
    const instancePart = instance === undefined ? 0 : (instance & instanceMask) + 1;
    const kindPart = kind === undefined ? 0 : ((kind >> kindShift) & kindMask) + 1;
    return instancePart * 512 + kindPart;
  };
};

/** The instance and kind behind a whole number of `partReader`. */
export const partOf = (part: number): PartKey => {
  const instance = Math.floor(part / 512);
  const kind = part % 512;
  return { ...(instance > 0 ? { instance: instance - 1 } : {}), ...(kind > 0 ? { kind: kind - 1 } : {}) };
};

const windAngleToBow = 2;
const waterTemperature = 0;
const outsideTemperature = 1;
const fuelTank = 0;
const waterTank = 1;

const temperatureOf = (kind: number): ReadingId[] => {
  if (kind === waterTemperature) return ['water-temperature'];
  return kind === outsideTemperature ? ['air-temperature'] : [];
};

const tankOf = (kind: number): ReadingId[] => {
  if (kind === fuelTank) return ['fuel-level'];
  return kind === waterTank ? ['water-level'] : [];
};

/** The readings a message of this kind gives, as recorded (lookups: pgn-database); none for a kind no reading stands for. */
export const readingsSeen = ({ pgn, kind }: { pgn: number; kind?: number | undefined }): ReadingId[] => {
  if (kind !== undefined) {
    if (pgn === 130_306) return [kind === windAngleToBow ? 'wind-apparent' : 'wind-true'];
    if (pgn === 130_311 || pgn === 130_312 || pgn === 130_316) return temperatureOf(kind);
    if (pgn === 127_505) return tankOf(kind);
  }
  return readingsOfPgn(pgn)
    .filter((entry) => entry.ifSaid !== true)
    .map((entry) => entry.reading);
};
