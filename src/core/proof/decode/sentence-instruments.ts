import type { DecodedValue, ValueReference } from './decoded-value.ts';
import {
  kelvinAt,
  ofFeet,
  ofKmPerHour,
  ofKnots,
  ofNauticalMiles,
  radians,
  type SentenceFields,
  toldDirection,
  toldValue,
} from './sentence-fields.ts';

export type SentenceDecoder = (fields: SentenceFields) => DecodedValue[];

const metresInFathom = 1.8288;
const secondsInMinute = 60;
const waterKind = 0;

const scaled = (value: number | undefined, factor: number): number | undefined =>
  value === undefined ? undefined : value * factor;

/** Depth in feet, metres and fathoms, of which the metres are the finest told. */
const depthFrom =
  (reference: 'transducer' | 'surface' | 'keel'): SentenceDecoder =>
  (fields) =>
    toldValue('depth', fields.measured([3, 1], [1, ofFeet], [5, metresInFathom]), { reference });

const windUnits: Readonly<Partial<Record<string, number>>> = { N: ofKnots, M: 1, K: ofKmPerHour };

/** Which wind MWV is about by the letter of its second field, whether it tells any or not. */
export const windReferenceOf = (letter: string | undefined): ValueReference | undefined =>
  letter === 'R' ? 'apparent' : letter === 'T' ? 'true-to-bow' : undefined;

const windToBow: SentenceDecoder = (fields) => {
  const reference = windReferenceOf(fields.text(2));
  if (!fields.is(5, 'A') || reference === undefined) return [];
  const factor = windUnits[fields.text(4) ?? ''];
  return [
    ...toldValue('wind-angle', fields.angle(1), { reference }),
    ...toldValue('wind-speed', factor === undefined ? undefined : scaled(fields.number(3), factor), { reference }),
  ];
};

const fullCircle = 360;

/** The older forms give the angle to either side of the bow, up to 180°. */
const windBySide =
  (reference: 'apparent' | 'true-to-bow'): SentenceDecoder =>
  (fields) => {
    const angle = fields.sided(1, 'R', 'L');
    const clockwise = angle === undefined ? undefined : ((angle + fullCircle) % fullCircle) * radians;
    return [
      ...toldValue('wind-angle', clockwise, { reference }),
      ...toldValue('wind-speed', fields.measured([5, 1], [3, ofKnots], [7, ofKmPerHour]), { reference }),
    ];
  };

const windFromNorth: SentenceDecoder = (fields) => [
  ...toldDirection('wind-angle', fields.angle(1), 'true'),
  ...toldDirection('wind-angle', fields.angle(3), 'magnetic'),
  ...toldValue('wind-speed', fields.measured([7, 1], [5, ofKnots]), { reference: 'true' }),
];

const waterSpeedAndHeading: SentenceDecoder = (fields) => [
  ...toldDirection('heading', fields.angle(1), 'true'),
  ...toldDirection('heading', fields.angle(3), 'magnetic'),
  ...toldValue('speed-through-water', fields.measured([5, ofKnots], [7, ofKmPerHour])),
];

const twoAxes: SentenceDecoder = (fields) => [
  ...(fields.is(3, 'A') ? toldValue('speed-through-water', scaled(fields.number(1), ofKnots)) : []),
  ...(fields.is(6, 'A') ? toldValue('speed-over-ground', scaled(fields.number(4), ofKnots)) : []),
];

const starboardRudder = 0;
const portRudder = 1;

/** One rudder, or two: the first is the starboard one. Instances are ours, since the sentence has none. */
const rudders: SentenceDecoder = (fields) => [
  ...(fields.is(2, 'A') ? toldValue('rudder', fields.angle(1), { instance: starboardRudder }) : []),
  ...(fields.is(4, 'A') ? toldValue('rudder', fields.angle(3), { instance: portRudder }) : []),
];

const engine: SentenceDecoder = (fields) => {
  const instance = fields.number(2);
  if (!fields.is(1, 'E') || !fields.is(5, 'A')) return [];
  return toldValue('engine-speed', fields.number(3), instance === undefined ? {} : { instance });
};

/** Heading, depth, speed, wind, rudder, engine and temperature of sentences, by formatter (source: raymond-nmea). */
export const instrumentSentences: Readonly<Record<string, SentenceDecoder>> = {
  HDG: (fields) => [
    ...toldDirection('heading', fields.angle(1), 'magnetic'),
    ...toldValue('deviation', scaled(fields.sided(2, 'E', 'W'), radians)),
    ...toldValue('variation', scaled(fields.sided(4, 'E', 'W'), radians)),
  ],
  HDM: (fields) => toldDirection('heading', fields.angle(1), 'magnetic'),
  HDT: (fields) => toldDirection('heading', fields.angle(1), 'true'),
  THS: (fields) => (fields.is(2, 'V') ? [] : toldDirection('heading', fields.angle(1), 'true')),
  ROT: (fields) => (fields.is(2, 'A') ? toldValue('rate-of-turn', scaled(fields.angle(1), 1 / secondsInMinute)) : []),
  DBT: depthFrom('transducer'),
  DBS: depthFrom('surface'),
  DBK: depthFrom('keel'),
  DPT: (fields) => [
    ...toldValue('depth', fields.number(1), { reference: 'transducer' }),
    ...toldValue('depth-offset', fields.number(2)),
  ],
  VHW: waterSpeedAndHeading,
  VBW: twoAxes,
  VLW: (fields) => [
    ...toldValue('log', scaled(fields.number(1), ofNauticalMiles)),
    ...toldValue('trip', scaled(fields.number(3), ofNauticalMiles)),
  ],
  MWV: windToBow,
  VWR: windBySide('apparent'),
  VWT: windBySide('true-to-bow'),
  MWD: windFromNorth,
  MTW: (fields) => toldValue('temperature', kelvinAt(fields, 1), { kind: waterKind }),
  RSA: rudders,
  RPM: engine,
};
