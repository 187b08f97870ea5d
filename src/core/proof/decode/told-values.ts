import { messageField } from '../../facts/message-fields.ts';
import { celsiusOfKelvin } from '../../units/celsius.ts';
import { knotsOfMetresPerSecond } from '../../units/knots.ts';
import { courseWords, depthWords, headingWords, turnWords, variationWords, windWords } from './nautical-words.ts';
import { type FieldValues, fieldReader } from './read-field.ts';

interface Telling {
  readonly fields: readonly string[];
  readonly words: (values: FieldValues) => readonly (string | undefined)[];
}

/** Words for one value, or none where it was not told. */
const told = (value: number | undefined, words: (value: number) => string): string | undefined =>
  value === undefined ? undefined : words(value);

const celsius = (kelvin: number): string => `${celsiusOfKelvin(kelvin).toFixed(1)} °C`;
const hectopascals = (pascals: number): string => `${(pascals / 100).toFixed(0)} hPa`;
const percent = (value: number): string => `${value.toFixed(0)} %`;
const knots = (metresPerS: number): string => `${knotsOfMetresPerSecond(metresPerS).toFixed(1)} kn`;
const metresInMile = 1852;
const secondsInHour = 3600;

const temperature = (id: string): Telling => ({ fields: [id], words: (values) => [told(values[id], celsius)] });

/** What is told of each message, so that a person can find the unit that says it. Positions are nobody else's business. */
const tellings: ReadonlyMap<number, Telling> = new Map<number, Telling>([
  [127_245, { fields: ['position'], words: ({ position }) => [told(position, turnWords)] }],
  [127_250, { fields: ['heading', 'deviation', 'variation', 'reference'], words: (values) => [headingWords(values)] }],
  [127_258, { fields: ['variation'], words: ({ variation }) => [told(variation, variationWords)] }],
  [127_488, { fields: ['speed'], words: ({ speed }) => [told(speed, (rpm) => `${rpm.toFixed(0)} rpm`)] }],
  [
    127_489,
    {
      fields: ['temperature', 'totalEngineHours'],
      words: (values) => [
        told(values.temperature, celsius),
        told(values.totalEngineHours, (runS) => `${(runS / secondsInHour).toFixed(0)} h run`),
      ],
    },
  ],
  [
    127_505,
    {
      fields: ['level', 'capacity'],
      words: ({ level, capacity }) => [told(level, percent), told(capacity, (litres) => `of ${litres.toFixed(0)} L`)],
    },
  ],
  [127_506, { fields: ['stateOfCharge'], words: (values) => [told(values.stateOfCharge, percent)] }],
  [
    127_508,
    {
      fields: ['voltage', 'current', 'temperature'],
      words: (values) => [
        told(values.voltage, (volts) => `${volts.toFixed(2)} V`),
        told(values.current, (amps) => `${amps.toFixed(1)} A`),
        told(values.temperature, celsius),
      ],
    },
  ],
  [128_259, { fields: ['speedWaterReferenced'], words: (values) => [told(values.speedWaterReferenced, knots)] }],
  [128_267, { fields: ['depth', 'offset'], words: (values) => [depthWords(values)] }],
  [
    128_275,
    { fields: ['log'], words: ({ log }) => [told(log, (metres) => `${(metres / metresInMile).toFixed(1)} nm`)] },
  ],
  [
    129_026,
    { fields: ['cogReference', 'cog', 'sog'], words: (values) => [told(values.sog, knots), courseWords(values)] },
  ],
  [
    130_306,
    {
      fields: ['windSpeed', 'windAngle', 'reference'],
      words: (values) => [told(values.windSpeed, knots), windWords(values)],
    },
  ],
  [
    130_310,
    {
      fields: ['waterTemperature', 'atmosphericPressure'],
      words: (values) => [told(values.waterTemperature, celsius), told(values.atmosphericPressure, hectopascals)],
    },
  ],
  [
    130_311,
    {
      fields: ['temperature', 'humidity', 'atmosphericPressure'],
      words: (values) => [
        told(values.temperature, celsius),
        told(values.humidity, percent),
        told(values.atmosphericPressure, hectopascals),
      ],
    },
  ],
  [130_312, temperature('actualTemperature')],
  [130_313, { fields: ['actualHumidity'], words: (values) => [told(values.actualHumidity, percent)] }],
  [130_314, { fields: ['pressure'], words: ({ pressure }) => [told(pressure, hectopascals)] }],
  [130_316, temperature('temperature')],
]);

/** Whether the values of a message are told, and its last one is worth keeping. */
export const isTold = (pgn: number): boolean => tellings.has(pgn);

/** Digits that a step of a field times a whole number cannot spoil: 230 x 0.01 is 2.3. */
const sureDigits = 12;

/** The values a message holds, of the fields that are told. */
export const valuesOf = (pgn: number, payload: Uint8Array): FieldValues => {
  const values: Record<string, number> = {};
  for (const id of tellings.get(pgn)?.fields ?? []) {
    const field = messageField(pgn, id);
    const value = field === undefined ? undefined : fieldReader(field)(payload);
    if (value !== undefined) values[id] = Number(value.toPrecision(sureDigits));
  }
  return values;
};

/** Values of a message in words: `12.78 V, -12.5 A`; undefined when none is told. */
export const valueWords = (pgn: number, values: FieldValues): string | undefined => {
  const words = (tellings.get(pgn)?.words(values) ?? []).filter((one) => one !== undefined);
  return words.length === 0 ? undefined : words.join(', ');
};
