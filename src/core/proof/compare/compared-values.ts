import { degreesOfRadians } from '../../units/compass-angle.ts';
import { knotsOfMetresPerSecond } from '../../units/knots.ts';
import { decodeMessage } from '../decode/decode-message.ts';
import { decodeParts } from '../decode/decode-sentence.ts';
import type { DecodedValue, Quantity } from '../decode/decoded-value.ts';
import { isOffsetSet } from '../decode/nautical-words.ts';
import type { SentenceParts } from '../decode/sentence-parts.ts';

/** What is compared between two sources; a position is told as two numbers. */
export const comparedKinds = [
  'heading',
  'depth',
  'variation',
  'position',
  'wind-angle',
  'wind-speed',
  'course',
] as const;
export type ComparedKind = (typeof comparedKinds)[number];

/** One value as a message gives it. */
export interface ComparedValue {
  readonly kind: ComparedKind;
  /** degrees, metres or knots; of a position the latitude */
  readonly value: number;
  /** of a position the longitude */
  readonly second?: number;
  /** of a heading or course; absent where the message does not say */
  readonly reference?: 'true' | 'magnetic';
  /** of a depth: what it is counted from, with the offset told */
  readonly datum?: 'surface' | 'keel' | 'transducer';
  /** of a heading: variation told beside it, degrees, east positive */
  readonly variationDeg?: number;
}

const messages: ReadonlySet<number> = new Set([127_250, 127_258, 128_267, 129_025, 129_026, 130_306]);

type Told = readonly DecodedValue[];

const first = (told: Told, quantity: Quantity): DecodedValue | undefined =>
  told.find((one) => one.quantity === quantity);

const degrees = (one: DecodedValue | undefined): number | undefined =>
  one === undefined ? undefined : degreesOfRadians(one.value);

const directed = (kind: 'heading' | 'course', { value, reference }: DecodedValue): ComparedValue => ({
  kind,
  value: degreesOfRadians(value),
  ...(reference === 'true' || reference === 'magnetic' ? { reference } : {}),
});

/** A sounding with what is added to it, and by the sign of that what it is counted from then. */
const countedDepth = (told: Told): ComparedValue[] => {
  const depth = first(told, 'depth');
  if (depth === undefined) return [];
  const { value, reference } = depth;
  if (reference === 'surface' || reference === 'keel') return [{ kind: 'depth', value, datum: reference }];
  const addedM = first(told, 'depth-offset')?.value;
  const datum = isOffsetSet(addedM) ? (addedM < 0 ? 'keel' : 'surface') : 'transducer';
  return [{ kind: 'depth', value: value + (addedM ?? 0), datum }];
};

const position = (told: Told): ComparedValue[] => {
  const [latitude, longitude] = [first(told, 'latitude'), first(told, 'longitude')];
  return latitude === undefined || longitude === undefined
    ? []
    : [{ kind: 'position', value: latitude.value, second: longitude.value }];
};

const wind = (told: Told): ComparedValue[] => {
  const apparent = told.filter(({ reference }) => reference === 'apparent');
  const [angleDeg, speed] = [degrees(first(apparent, 'wind-angle')), first(apparent, 'wind-speed')];
  return [
    ...(angleDeg === undefined ? [] : [{ kind: 'wind-angle', value: angleDeg } as const]),
    ...(speed === undefined ? [] : [{ kind: 'wind-speed', value: knotsOfMetresPerSecond(speed.value) } as const]),
  ];
};

/** A course told from true and from magnetic north is one course; headings may come from two places. */
const comparable = (told: Told): readonly ComparedValue[] => {
  if (told.length === 0) return [];
  const variationDeg = degrees(first(told, 'variation'));
  const course = first(told, 'course');
  return [
    ...told
      .filter(({ quantity }) => quantity === 'heading')
      .map((one) => ({ ...directed('heading', one), ...(variationDeg === undefined ? {} : { variationDeg }) })),
    ...countedDepth(told),
    ...position(told),
    ...wind(told),
    ...(course === undefined ? [] : [directed('course', course)]),
    ...(variationDeg === undefined ? [] : [{ kind: 'variation', value: variationDeg } as const]),
  ];
};

/** Whether values of a message are compared between its senders. */
export const isCompared = (pgn: number): boolean => messages.has(pgn);

/** The values of one bus message that can be compared with those of another sender. */
export const comparedValues = (pgn: number, payload: Uint8Array): readonly ComparedValue[] =>
  isCompared(pgn) ? comparable(decodeMessage(pgn, payload)) : [];

/** The values of a sentence that can be compared with those of another source. */
export const comparedInSentence = (parts: SentenceParts): readonly ComparedValue[] => comparable(decodeParts(parts));
