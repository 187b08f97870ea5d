import { byCodeUnit } from './ids.ts';
import type { Sheet } from './sheet.ts';
import { sortedBy } from './sorted-by.ts';

type Sensor = NonNullable<Sheet['sensor']>;

/** The same with its signals by port, frequencies rising, codings by name. */
export const canonicalSensor = (sensor: Sensor): Sensor => {
  if (sensor.signals === undefined) return sensor;
  const signals = sensor.signals.map((signal) => ({
    ...signal,
    ...(signal.frequenciesKHz === undefined
      ? {}
      : { frequenciesKHz: [...signal.frequenciesKHz].sort((one, other) => one - other) }),
    ...(signal.vanes === undefined ? {} : { vanes: [...signal.vanes].sort(byCodeUnit) }),
  }));
  return { ...sensor, signals: sortedBy(signals, ({ port }) => [port]) };
};
