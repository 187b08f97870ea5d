import type { SentenceParts } from '../decode/sentence-parts.ts';
import { type ComparedValue, countedDepth } from './compared-values.ts';

const number = (text: string | undefined): number | undefined => {
  const value = text === undefined || text === '' ? Number.NaN : Number(text);
  return Number.isFinite(value) ? value : undefined;
};

const signed = (text: string | undefined, side: string | undefined): number | undefined => {
  const value = number(text);
  return value === undefined ? undefined : side === 'W' || side === 'S' ? -value : value;
};

/** `5404.107`, N: whole degrees, then minutes. */
const degreesOf = (text: string | undefined, side: string | undefined): number | undefined => {
  const value = number(text);
  if (value === undefined) return undefined;
  const whole = Math.floor(value / 100);
  return signed(String(whole + (value - whole * 100) / 60), side);
};

type Fields = readonly string[];

const one = (
  kind: ComparedValue['kind'],
  value: number | undefined,
  more: Partial<ComparedValue> = {},
): ComparedValue[] => (value === undefined ? [] : [{ kind, value, ...more }]);

const position = (latitude: number | undefined, longitude: number | undefined): ComparedValue[] =>
  latitude === undefined || longitude === undefined ? [] : [{ kind: 'position', value: latitude, second: longitude }];

const isValid = (status: string | undefined): boolean => status !== 'V';

const rmc = (f: Fields): ComparedValue[] =>
  isValid(f[1])
    ? [
        ...position(degreesOf(f[2], f[3]), degreesOf(f[4], f[5])),
        ...one('course', number(f[7]), { reference: 'true' }),
        ...one('variation', signed(f[9], f[10])),
      ]
    : [];

const hdg = (f: Fields): ComparedValue[] => {
  const variationDeg = signed(f[3], f[4]);
  return [
    ...one('heading', number(f[0]), { reference: 'magnetic', ...(variationDeg === undefined ? {} : { variationDeg }) }),
    ...one('variation', variationDeg),
  ];
};

const knotsIn: Readonly<Record<string, number>> = { N: 1, M: 3600 / 1852, K: 1000 / 1852 };

const mwv = (f: Fields): ComparedValue[] => {
  const speed = number(f[2]);
  const unit = knotsIn[f[3] ?? ''];
  if (f[1] !== 'R' || !isValid(f[4])) return [];
  return [
    ...one('wind-angle', number(f[0])),
    ...(unit === undefined || speed === undefined ? [] : one('wind-speed', speed * unit)),
  ];
};

const dpt = (f: Fields): ComparedValue[] => {
  const depthM = number(f[0]);
  return depthM === undefined ? [] : [countedDepth(depthM, number(f[1]))];
};

const readers: ReadonlyMap<string, (fields: Fields) => ComparedValue[]> = new Map([
  ['DBT', (f) => one('depth', number(f[2]), { datum: 'transducer' })],
  ['DPT', dpt],
  ['GGA', (f) => position(degreesOf(f[1], f[2]), degreesOf(f[3], f[4]))],
  ['GLL', (f) => (isValid(f[5]) ? position(degreesOf(f[0], f[1]), degreesOf(f[2], f[3])) : [])],
  ['HDG', hdg],
  ['HDM', (f) => one('heading', number(f[0]), { reference: 'magnetic' })],
  ['HDT', (f) => one('heading', number(f[0]), { reference: 'true' })],
  ['MWV', mwv],
  ['RMC', rmc],
  ['THS', (f) => (isValid(f[1]) ? one('heading', number(f[0]), { reference: 'true' }) : [])],
  [
    'VHW',
    (f) => [
      ...one('heading', number(f[0]), { reference: 'true' }),
      ...one('heading', number(f[2]), { reference: 'magnetic' }),
    ],
  ],
  ['VTG', (f) => one('course', number(f[0]), { reference: 'true' })],
]);

/** The values of a sentence that can be compared with those of another source. */
export const sentenceValues = ({ formatter, fields }: SentenceParts): readonly ComparedValue[] =>
  readers.get(formatter)?.(fields) ?? [];
