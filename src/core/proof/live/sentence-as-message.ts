import type { FieldValues } from '../decode/read-field.ts';

/** What a sentence says, as the message of the bus that says the same would have it (fields: raymond-nmea). */
export interface AsMessage {
  readonly pgn: number;
  readonly values: FieldValues;
}

type Fields = readonly string[];

const metresInMile = 1852;
const knotMs = metresInMile / 3600;
const kelvinAtZero = 273.15;
const secondsInMinute = 60;
const trueNorth = 0;
const magnetic = 1;
const apparent = 2;
/** wind as the boat has it, worked out from water speed: no north in it */
const byBoat = 3;

const number = (text: string | undefined): number | undefined => {
  const value = text === undefined || text === '' ? Number.NaN : Number(text);
  return Number.isFinite(value) ? value : undefined;
};

const radians = (text: string | undefined): number | undefined => {
  const degrees = number(text);
  return degrees === undefined ? undefined : (degrees * Math.PI) / 180;
};

/** East, north and starboard are positive. */
const signedRadians = (text: string | undefined, side: string | undefined): number | undefined => {
  const value = radians(text);
  return value === undefined || side !== 'W' ? value : -value;
};

const knots = (text: string | undefined): number | undefined => {
  const value = number(text);
  return value === undefined ? undefined : value * knotMs;
};

const msOf: Readonly<Record<string, number>> = { N: knotMs, M: 1, K: 1 / 3.6 };

const speedIn = (text: string | undefined, unit: string | undefined): number | undefined => {
  const [value, factor] = [number(text), msOf[unit ?? '']];
  return value === undefined || factor === undefined ? undefined : value * factor;
};

const mapped = (value: number | undefined, of: (value: number) => number): number | undefined =>
  value === undefined ? undefined : of(value);

const kelvin = (text: string | undefined) => mapped(number(text), (celsius) => celsius + kelvinAtZero);
const metres = (text: string | undefined) => mapped(number(text), (miles) => miles * metresInMile);
const perSecond = (text: string | undefined) => mapped(radians(text), (perMinute) => perMinute / secondsInMinute);

/** `5404.107`, N: whole degrees, then minutes. */
const degrees = (text: string | undefined, side: string | undefined): number | undefined =>
  mapped(number(text), (value) => {
    const whole = Math.floor(value / 100);
    const found = whole + (value - whole * 100) / 60;
    return side === 'S' || side === 'W' ? -found : found;
  });

/** The values that are there: an absent one is absent. */
const told = (values: Readonly<Record<string, number | undefined>>): FieldValues =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as FieldValues;

const position = (...[latitude, north, longitude, east]: readonly (string | undefined)[]): FieldValues =>
  told({ latitude: degrees(latitude, north), longitude: degrees(longitude, east) });

const heading = (f: Fields, reference: number): FieldValues => told({ heading: radians(f[0]), reference });

const readers: ReadonlyMap<string, readonly [pgn: number, read: (fields: Fields) => FieldValues]> = new Map([
  ['DBT', [128_267, (f) => told({ depth: number(f[2]) })]],
  ['DPT', [128_267, (f) => told({ depth: number(f[0]), offset: number(f[1]) })]],
  ['GGA', [129_029, (f) => position(f[1], f[2], f[3], f[4])]],
  ['GLL', [129_025, (f) => (f[5] === 'V' ? {} : position(f[0], f[1], f[2], f[3]))]],
  ['HDM', [127_250, (f) => heading(f, magnetic)]],
  ['HDT', [127_250, (f) => heading(f, trueNorth)]],
  ['THS', [127_250, (f) => (f[1] === 'V' ? {} : heading(f, trueNorth))]],
  [
    'HDG',
    [
      127_250,
      (f) =>
        told({
          heading: radians(f[0]),
          deviation: signedRadians(f[1], f[2]),
          variation: signedRadians(f[3], f[4]),
          reference: magnetic,
        }),
    ],
  ],
  [
    'MWV',
    [
      130_306,
      (f) =>
        f[4] === 'V'
          ? {}
          : told({
              windAngle: radians(f[0]),
              windSpeed: speedIn(f[2], f[3]),
              reference: f[1] === 'R' ? apparent : byBoat,
            }),
    ],
  ],
  ['MTW', [130_312, (f) => told({ actualTemperature: kelvin(f[0]) })]],
  [
    'RMC',
    [129_026, (f) => (f[1] === 'V' ? {} : told({ sog: knots(f[6]), cog: radians(f[7]), cogReference: trueNorth }))],
  ],
  ['ROT', [127_251, (f) => told({ rate: perSecond(f[0]) })]],
  ['RSA', [127_245, (f) => (f[1] === 'V' ? {} : told({ position: radians(f[0]) }))]],
  ['VHW', [128_259, (f) => told({ speedWaterReferenced: knots(f[4]) })]],
  ['VLW', [128_275, (f) => told({ log: metres(f[0]) })]],
  ['VTG', [129_026, (f) => told({ cog: radians(f[0]), sog: knots(f[4]), cogReference: trueNorth })]],
  ['XTE', [129_283, (f) => (f[0] === 'V' ? {} : told({ xte: metres(f[2]) }))]],
]);

/** The message of the bus that says what a sentence says; undefined where none does, or where it says nothing. */
export const sentenceAsMessage = (formatter: string, fields: Fields): AsMessage | undefined => {
  const found = readers.get(formatter);
  if (found === undefined) return undefined;
  const [pgn, read] = found;
  return { pgn, values: read(fields) };
};
