import { lookupWord, type MessageField, messageField } from '../../facts/message-fields.ts';
import { readingsOfPgn } from '../../facts/message-readings.ts';
import type { ReadingId } from '../../facts/reading-ids.ts';
import { bitsAt } from './read-field.ts';

/** The fields in which a message says which of several things it is about (source: pgn-database). */
interface PartFields {
  /** data instance; absent = the message has none */
  readonly instance?: string;
  /** tank contents, wind or direction reference, temperature source */
  readonly kind?: string;
}

const instanceOnly: PartFields = { instance: 'instance' };
const instanceAndSource: PartFields = { instance: 'instance', kind: 'source' };

const partFields: ReadonlyMap<number, PartFields> = new Map([
  [127_245, instanceOnly],
  [127_250, { kind: 'reference' }],
  [127_488, instanceOnly],
  [127_489, instanceOnly],
  [127_493, instanceOnly],
  [127_497, instanceOnly],
  [127_501, instanceOnly],
  [127_503, instanceOnly],
  [127_504, instanceOnly],
  [127_505, { instance: 'instance', kind: 'type' }],
  [127_506, { instance: 'instance', kind: 'dcType' }],
  [127_507, instanceOnly],
  [127_508, instanceOnly],
  [127_509, instanceOnly],
  [127_513, instanceOnly],
  [127_751, { instance: 'connectionNumber' }],
  [129_026, { kind: 'cogReference' }],
  [130_306, { kind: 'reference' }],
  [130_311, { kind: 'temperatureSource' }],
  [130_312, instanceAndSource],
  [130_313, instanceAndSource],
  [130_314, instanceAndSource],
  [130_316, instanceAndSource],
]);

const partField = (pgn: number, id: string | undefined): MessageField | undefined =>
  id === undefined ? undefined : messageField(pgn, id);

/** One of the things a message is about: an instance, a kind, or both. */
export interface PartKey {
  readonly instance?: number;
  readonly kind?: number;
}

/** Part of a message whose number tells no parts, or that is too short to say. */
const whole = 0;

/** Tells the parts of one message number, as a whole number to look up by; 0 = the message as a whole. */
export const partReader = (pgn: number): ((payload: Uint8Array) => number) => {
  const named = partFields.get(pgn);
  const instance = partField(pgn, named?.instance);
  const kind = partField(pgn, named?.kind);
  if (instance === undefined && kind === undefined) return () => whole;
  const leastBits = Math.max(
    ...[instance, kind].map((field) => (field === undefined ? 0 : field.firstBit + field.bits)),
  );
  return (payload) => {
    if (payload.length * 8 < leastBits) return whole;
    const instancePart = instance === undefined ? 0 : bitsAt(payload, instance) + 1;
    const kindPart = kind === undefined ? 0 : bitsAt(payload, kind) + 1;
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

/** What the kind of a message means, in the database’s words: `Black water`, `Engine Room Temperature`. */
export const kindWord = ({ pgn, kind }: { pgn: number; kind?: number | undefined }): string | undefined => {
  const lookup = partField(pgn, partFields.get(pgn)?.kind)?.lookup;
  return kind === undefined || lookup === undefined ? undefined : lookupWord(lookup, kind);
};

/** Whether a message says in a field which tank, engine or battery it is about. */
export const carriesInstance = (pgn: number): boolean => partFields.get(pgn)?.instance !== undefined;
