import type { SourceKey } from './sources.ts';

type Hours = readonly [least: number, most: number];

interface Duty {
  readonly kind: string;
  /** hours of a day at anchor, of 24 hours sailing, of 10 hours under engine; absent = what is left of the run */
  readonly anchor?: Hours;
  readonly sailing?: Hours;
  readonly motoring?: Hours;
  readonly source: SourceKey;
}

/** Hours a day that things run; the satellite terminal runs as switched, all day if left on. */
export const dutyHours: readonly Duty[] = [
  { kind: 'helm display', anchor: [0, 1], sailing: [24, 24], motoring: [10, 10], source: 'practice-duty' },
  { kind: 'nav-station display', anchor: [1, 3], sailing: [4, 8], motoring: [10, 10], source: 'practice-duty' },
  { kind: 'radar transmit', anchor: [0, 0], sailing: [4, 8], motoring: [3, 10], source: 'practice-duty' },
  { kind: 'radar standby', anchor: [0, 0], source: 'practice-duty' },
  { kind: 'AIS', anchor: [24, 24], sailing: [24, 24], motoring: [10, 10], source: 'practice-duty' },
  { kind: 'VHF receive', anchor: [6, 24], sailing: [24, 24], motoring: [10, 10], source: 'practice-duty' },
  { kind: 'VHF transmit', anchor: [0.1, 0.1], sailing: [0.2, 0.2], motoring: [0.15, 0.15], source: 'practice-duty' },
  { kind: 'instruments', anchor: [0, 6], sailing: [24, 24], motoring: [10, 10], source: 'practice-duty' },
  { kind: 'satellite terminal', anchor: [0, 24], sailing: [0, 24], motoring: [10, 10], source: 'practice-duty' },
];

/** Share of the run that the motor of a pilot turns, %. */
export const pilotMotorPct = {
  source: 'practice-duty',
  balanced: [20, 40],
  quarteringSea: [50, 70],
  motoring: [15, 30],
} as const;
