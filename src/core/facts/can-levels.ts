import type { SourceKey } from './sources.ts';

interface Window {
  readonly leastV: number;
  readonly mostV: number;
  readonly usualV?: number;
  readonly source: SourceKey;
}

/** Levels of the two data wires against 0 V, as a transceiver makes them and as a meter shows them. */
export const canLevels = {
  recessive: { leastV: 2, usualV: 2.5, mostV: 3, source: 'ti-can-levels' },
  dominantHigh: { leastV: 2.75, mostV: 4.5, source: 'ti-can-levels' },
  dominantLow: { leastV: 0.5, mostV: 2.25, source: 'ti-can-levels' },
  dominantDifference: { leastV: 1.5, mostV: 3, source: 'ti-can-levels' },
  recessiveDifference: { leastV: -0.12, mostV: 0.012, source: 'ti-can-levels' },
  /** either wire of an idle bus */
  idle: { leastV: 2, usualV: 2.5, mostV: 4, source: 'esd-can' },
  /** what a meter averages on a busy bus */
  busyHigh: { leastV: 2.7, mostV: 3.3, source: 'practice-dock-tests' },
  busyLow: { leastV: 1.7, mostV: 2.3, source: 'practice-dock-tests' },
} as const satisfies Record<string, Window>;

/** Levels at which one diagnostic instrument warns and alarms, against 0 V at that point. */
export const meterAlarms = {
  source: 'maker-meter-levels',
  recessive: { warnV: [-2, 7], faultV: [-3, 8.5] },
  dominantHigh: { warnV: [-1.25, 8.5], faultV: [-2.25, 10] },
  dominantLow: { warnV: [-3.5, 6.25], faultV: [-4.5, 7.75] },
  recessiveDifference: { faultV: [-0.18, 0.08] },
} as const;
