import { messageField } from '../../facts/message-fields.ts';
import { degreesOfRadians } from '../../units/compass-angle.ts';
import { knotsOfMetresPerSecond } from '../../units/knots.ts';
import { fieldReader } from '../decode/read-field.ts';

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

type Read = (payload: Uint8Array) => number | undefined;

const field = (pgn: number, id: string): Read => {
  const found = messageField(pgn, id);
  return found === undefined ? () => undefined : fieldReader(found);
};

const heading = field(127_250, 'heading');
const headingVariation = field(127_250, 'variation');
const headingReference = field(127_250, 'reference');
const variation = field(127_258, 'variation');
const depth = field(128_267, 'depth');
const depthOffset = field(128_267, 'offset');
const latitude = field(129_025, 'latitude');
const longitude = field(129_025, 'longitude');
const course = field(129_026, 'cog');
const courseReference = field(129_026, 'cogReference');
const windAngle = field(130_306, 'windAngle');
const windSpeed = field(130_306, 'windSpeed');
const windReference = field(130_306, 'reference');
const apparent = 2;

const referenceOf = (code: number | undefined): { reference?: 'true' | 'magnetic' } =>
  code === 0 ? { reference: 'true' } : code === 1 ? { reference: 'magnetic' } : {};

/** A sounding with what is added to it, and by the sign of that what it is counted from then. */
export const countedDepth = (depthM: number, offsetM: number | undefined): ComparedValue => {
  const added = offsetM ?? 0;
  const datum = Math.abs(added) < 0.005 ? 'transducer' : added < 0 ? 'keel' : 'surface';
  return { kind: 'depth', value: depthM + added, datum };
};

const headingValue = (payload: Uint8Array): ComparedValue[] => {
  const rad = heading(payload);
  const variationRad = headingVariation(payload);
  if (rad === undefined) return [];
  const told = { kind: 'heading', value: degreesOfRadians(rad), ...referenceOf(headingReference(payload)) } as const;
  if (variationRad === undefined) return [told];
  const variationDeg = degreesOfRadians(variationRad);
  return [
    { ...told, variationDeg },
    { kind: 'variation', value: variationDeg },
  ];
};

const windValues = (payload: Uint8Array): ComparedValue[] => {
  if (windReference(payload) !== apparent) return [];
  const angle = windAngle(payload);
  const speed = windSpeed(payload);
  return [
    ...(angle === undefined ? [] : [{ kind: 'wind-angle', value: degreesOfRadians(angle) } as const]),
    ...(speed === undefined ? [] : [{ kind: 'wind-speed', value: knotsOfMetresPerSecond(speed) } as const]),
  ];
};

const readers: ReadonlyMap<number, (payload: Uint8Array) => ComparedValue[]> = new Map([
  [127_250, headingValue],
  [
    127_258,
    (payload) => {
      const rad = variation(payload);
      return rad === undefined ? [] : [{ kind: 'variation', value: degreesOfRadians(rad) }];
    },
  ],
  [
    128_267,
    (payload) => {
      const sounded = depth(payload);
      return sounded === undefined ? [] : [countedDepth(sounded, depthOffset(payload))];
    },
  ],
  [
    129_025,
    (payload) => {
      const [value, second] = [latitude(payload), longitude(payload)];
      return value === undefined || second === undefined ? [] : [{ kind: 'position', value, second }];
    },
  ],
  [
    129_026,
    (payload) => {
      const rad = course(payload);
      if (rad === undefined) return [];
      return [{ kind: 'course', value: degreesOfRadians(rad), ...referenceOf(courseReference(payload)) }];
    },
  ],
  [130_306, windValues],
]);

/** Whether values of a message are compared between its senders. */
export const isCompared = (pgn: number): boolean => readers.has(pgn);

/** The values of one bus message that can be compared with those of another sender. */
export const comparedValues = (pgn: number, payload: Uint8Array): readonly ComparedValue[] =>
  readers.get(pgn)?.(payload) ?? [];
