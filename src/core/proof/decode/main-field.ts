import { messageField } from '../../facts/message-fields.ts';
import { fieldReader } from './read-field.ts';

/** The field a message is sent for; without a value in it the message tells nothing (source: pgn-database). */
const mainFields: ReadonlyMap<number, string> = new Map([
  [126_992, 'time'],
  [127_245, 'position'],
  [127_250, 'heading'],
  [127_251, 'rate'],
  [127_257, 'pitch'],
  [127_258, 'variation'],
  [127_488, 'speed'],
  [127_505, 'level'],
  [127_506, 'stateOfCharge'],
  [127_508, 'voltage'],
  [128_000, 'leewayAngle'],
  [128_259, 'speedWaterReferenced'],
  [128_267, 'depth'],
  [128_275, 'log'],
  [129_025, 'latitude'],
  [129_026, 'sog'],
  [129_029, 'latitude'],
  [129_283, 'xte'],
  [129_284, 'distanceToWaypoint'],
  [129_291, 'drift'],
  [130_306, 'windSpeed'],
  [130_310, 'waterTemperature'],
  [130_311, 'temperature'],
  [130_312, 'actualTemperature'],
  [130_313, 'actualHumidity'],
  [130_314, 'pressure'],
  [130_316, 'temperature'],
]);

const neverEmpty = (): boolean => false;

/** Tells whether a message of this number comes without data; for numbers not in the table the answer is always no. */
export const emptinessOf = (pgn: number): ((payload: Uint8Array) => boolean) => {
  const id = mainFields.get(pgn);
  const field = id === undefined ? undefined : messageField(pgn, id);
  if (field === undefined) return neverEmpty;
  const read = fieldReader(field);
  return (payload) => read(payload) === undefined;
};
