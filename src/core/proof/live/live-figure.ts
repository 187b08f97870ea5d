import { messageField } from '../../facts/message-fields.ts';
import { celsiusOfKelvin } from '../../units/celsius.ts';
import { degreesOfRadians } from '../../units/compass-angle.ts';
import { knotsOfMetresPerSecond } from '../../units/knots.ts';
import { type FieldValues, fieldReader } from '../decode/read-field.ts';

/** A number that can be drawn as a curve, in the unit a person reads it in. */
export interface LiveFigure {
  readonly value: number;
  readonly unit: string;
  /** the value is an angle that goes round: 359° is beside 1° */
  readonly round?: true;
}

type Of = (raw: number) => number;
const same: Of = (raw) => raw;
const hundredth: Of = (raw) => raw / 100;
const perMinute: Of = (radPerS) => degreesOfRadians(radPerS) * 60;

type Row = readonly [pgn: number, field: string, unit: string, of: Of, round?: true];

/** The number each message is looked at for; of a message that tells several, the one it is sent for. */
const rows: readonly Row[] = [
  [127_245, 'position', '°', degreesOfRadians],
  [127_250, 'heading', '°', degreesOfRadians, true],
  [127_251, 'rate', '°/min', perMinute],
  [127_257, 'roll', '°', degreesOfRadians],
  [127_258, 'variation', '°', degreesOfRadians],
  [127_488, 'speed', 'rpm', same],
  [127_489, 'temperature', '°C', celsiusOfKelvin],
  [127_505, 'level', '%', same],
  [127_506, 'stateOfCharge', '%', same],
  [127_508, 'voltage', 'V', same],
  [128_259, 'speedWaterReferenced', 'kn', knotsOfMetresPerSecond],
  [128_267, 'depth', 'm', same],
  [129_026, 'sog', 'kn', knotsOfMetresPerSecond],
  [129_283, 'xte', 'm', same],
  [129_291, 'drift', 'kn', knotsOfMetresPerSecond],
  [130_306, 'windSpeed', 'kn', knotsOfMetresPerSecond],
  [130_310, 'waterTemperature', '°C', celsiusOfKelvin],
  [130_311, 'temperature', '°C', celsiusOfKelvin],
  [130_312, 'actualTemperature', '°C', celsiusOfKelvin],
  [130_313, 'actualHumidity', '%', same],
  [130_314, 'pressure', 'hPa', hundredth],
  [130_316, 'temperature', '°C', celsiusOfKelvin],
];

const figureIn = ([, , unit, of, round]: Row, raw: number | undefined): LiveFigure | undefined =>
  raw === undefined ? undefined : { value: of(raw), unit, ...(round === true ? { round } : {}) };

type ReadFigure = (payload: Uint8Array) => LiveFigure | undefined;

const readerOf = (row: Row): ReadFigure => {
  const [pgn, id] = row;
  const field = messageField(pgn, id);
  if (field === undefined) throw new Error(`message ${pgn} has no field ${id}`);
  const read = fieldReader(field);
  return (payload) => figureIn(row, read(payload));
};

const byPgn: ReadonlyMap<number, { readonly row: Row; readonly read: ReadFigure }> = new Map(
  rows.map((row) => [row[0], { row, read: readerOf(row) }]),
);

/**
 * The number of a message that is drawn as a curve, in the unit a person reads; undefined where it tells none
 * (fields: pgn-database).
 */
export const figureOf = (pgn: number, payload: Uint8Array): LiveFigure | undefined => byPgn.get(pgn)?.read(payload);

/** The same of values that were read already. */
export const figureOfValues = (pgn: number, values: FieldValues): LiveFigure | undefined => {
  const row = byPgn.get(pgn)?.row;
  return row === undefined ? undefined : figureIn(row, values[row[1]]);
};

const digitsOf: Readonly<Record<string, number>> = { rpm: 0, '%': 0, hPa: 0, V: 2 };

/** A figure as short as it can be shown beside a unit: `8.2 m`, `68.8°`, `12.80 V`. */
export const figureWords = ({ value, unit }: LiveFigure): string => {
  const text = value.toFixed(digitsOf[unit] ?? 1);
  return unit.startsWith('°') && unit !== '°C' ? `${text}${unit}` : `${text} ${unit}`;
};
