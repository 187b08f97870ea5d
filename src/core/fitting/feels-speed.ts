import type { Sheet } from '../boat/sheet.ts';
import { readingsOf } from '../facts/message-readings.ts';

/** Sensors that are said to be of something else and may hold a paddle as well. */
const mayHoldPaddle: ReadonlySet<string> = new Set(['depth-sensor', 'transducer']);

/** Whether a unit feels the speed through the water: a log, or a sensor in the hull that says so beside the depth. */
export const feelsSpeed = ({ kind, ports, sensor }: Sheet): boolean => {
  if (kind === 'speed-sensor') return true;
  if (!mayHoldPaddle.has(kind)) return false;
  const says = ports.some(({ sends = [] }) =>
    sends.some((sent) => readingsOf(sent).some(({ reading }) => reading === 'speed-water')),
  );
  return says || sensor?.signals?.some(({ pulses }) => pulses !== undefined) === true;
};
