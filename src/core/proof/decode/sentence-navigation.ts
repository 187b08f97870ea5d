import type { DecodedValue } from './decoded-value.ts';
import {
  ofKmPerHour,
  ofKnots,
  ofNauticalMiles,
  radians,
  type SentenceFields,
  toldDirection,
  toldValue,
} from './sentence-fields.ts';
import type { SentenceDecoder } from './sentence-instruments.ts';

const scaled = (value: number | undefined, factor: number): number | undefined =>
  value === undefined ? undefined : value * factor;

const position = (fields: SentenceFields, at: number): DecodedValue[] => [
  ...toldValue('latitude', fields.place(at, 'N', 'S')),
  ...toldValue('longitude', fields.place(at + 2, 'E', 'W')),
];

const clockPattern = /^(\d{2})(\d{2})(\d{2}(?:\.\d+)?)$/;
const datePattern = /^(\d{2})(\d{2})(\d{2})$/;
const millisecondsInSecond = 1000;
/** Years of two digits are of this century from 2000 to 2079: GNSS began in 1980. */
const firstYearOfLastCentury = 80;

const clockS = (text: string | undefined): number | undefined => {
  const [, hours, minutes, seconds] = clockPattern.exec(text ?? '') ?? [];
  return hours === undefined ? undefined : Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds);
};

const dayS = (year: number, month: number, day: number): number | undefined => {
  const isDay = month >= 1 && month <= 12 && day >= 1 && day <= 31;
  return isDay ? Date.UTC(year, month - 1, day) / millisecondsInSecond : undefined;
};

const dayOfShortDate = (text: string | undefined): number | undefined => {
  const [, day, month, year] = datePattern.exec(text ?? '') ?? [];
  if (year === undefined) return undefined;
  const century = Number(year) >= firstYearOfLastCentury ? 1900 : 2000;
  return dayS(century + Number(year), Number(month), Number(day));
};

const timeOf = (day: number | undefined, clock: number | undefined): DecodedValue[] =>
  toldValue('unix-time', day === undefined || clock === undefined ? undefined : day + clock);

const minimum: SentenceDecoder = (fields) => [
  ...timeOf(dayOfShortDate(fields.text(9)), clockS(fields.text(1))),
  ...(fields.is(2, 'A')
    ? [
        ...position(fields, 3),
        ...toldValue('speed-over-ground', scaled(fields.number(7), ofKnots)),
        ...toldDirection('course', fields.angle(8), 'true'),
        ...toldValue('variation', scaled(fields.sided(10, 'E', 'W'), radians)),
      ]
    : []),
];

/** Editions before 2.00 had no letters between: true, magnetic, knots, km/h. */
const courseAndSpeed: SentenceDecoder = (fields) => {
  if (fields.is(9, 'N')) return [];
  const isOld = fields.number(2) !== undefined || (fields.text(2) === undefined && fields.number(4) !== undefined);
  const [magneticAt, knotsAt, kmAt] = isOld ? [2, 3, 4] : [3, 5, 7];
  return [
    ...toldDirection('course', fields.angle(1), 'true'),
    ...toldDirection('course', fields.angle(magneticAt), 'magnetic'),
    ...toldValue('speed-over-ground', fields.measured([knotsAt, ofKnots], [kmAt, ofKmPerHour])),
  ];
};

/** Off the track to starboard is positive: the sentence tells which way to steer to get back (from memory). */
const crossTrack = (fields: SentenceFields, at: number): DecodedValue[] =>
  toldValue('cross-track', scaled(fields.sided(at, 'L', 'R'), ofNauticalMiles));

const referred = (
  fields: SentenceFields,
  quantity: 'waypoint-bearing' | 'heading-to-steer',
  at: number,
): DecodedValue[] => {
  if (fields.is(at + 1, 'T')) return toldDirection(quantity, fields.angle(at), 'true');
  return fields.is(at + 1, 'M') ? toldDirection(quantity, fields.angle(at), 'magnetic') : [];
};

const toWaypoint: SentenceDecoder = (fields) =>
  fields.is(1, 'A')
    ? [
        ...crossTrack(fields, 2),
        ...toldValue('waypoint-distance', scaled(fields.number(10), ofNauticalMiles)),
        ...toldDirection('waypoint-bearing', fields.angle(11), 'true'),
        ...toldValue('waypoint-closing', scaled(fields.number(12), ofKnots)),
      ]
    : [];

const forPilot: SentenceDecoder = (fields) =>
  fields.is(1, 'A') && fields.is(2, 'A')
    ? [
        ...(fields.is(5, 'N') ? crossTrack(fields, 3) : []),
        ...referred(fields, 'waypoint-bearing', 11),
        ...referred(fields, 'heading-to-steer', 13),
      ]
    : [];

const bearingAndDistance: SentenceDecoder = (fields) => [
  ...toldDirection('waypoint-bearing', fields.angle(6), 'true'),
  ...toldDirection('waypoint-bearing', fields.angle(8), 'magnetic'),
  ...toldValue('waypoint-distance', scaled(fields.number(10), ofNauticalMiles)),
];

const dateAndTime: SentenceDecoder = (fields) => {
  const [day, month, year] = [fields.number(2), fields.number(3), fields.number(4)];
  if (day === undefined || month === undefined || year === undefined) return [];
  return timeOf(dayS(year, month, day), clockS(fields.text(1)));
};

/** Position, course, time and the way to the next waypoint, by formatter (source: raymond-nmea). */
export const navigationSentences: Readonly<Record<string, SentenceDecoder>> = {
  GGA: (fields) =>
    (fields.number(6) ?? 0) === 0 ? [] : [...position(fields, 2), ...toldValue('altitude', fields.number(9))],
  GLL: (fields) => (fields.is(6, 'V') ? [] : position(fields, 1)),
  GNS: (fields) =>
    /^N*$/.test(fields.text(6) ?? '') ? [] : [...position(fields, 2), ...toldValue('altitude', fields.number(9))],
  RMC: minimum,
  VTG: courseAndSpeed,
  ZDA: dateAndTime,
  XTE: (fields) => (fields.is(1, 'A') && fields.is(2, 'A') && fields.is(5, 'N') ? crossTrack(fields, 3) : []),
  RMB: toWaypoint,
  APB: forPilot,
  BWC: bearingAndDistance,
  BWR: bearingAndDistance,
  VDR: (fields) => [
    ...toldDirection('set', fields.angle(1), 'true'),
    ...toldDirection('set', fields.angle(3), 'magnetic'),
    ...toldValue('drift', scaled(fields.number(5), ofKnots)),
  ],
};
