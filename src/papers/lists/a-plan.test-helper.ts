import { emptyPlan } from '../../core/empty-plan.test-helper.ts';
import type { BusEntry, Finding, Plan, ReadingEntry } from '../../core/plan-shape.ts';

/** A backbone as a plan has it, well within every limit. */
export const aBus = (over: Partial<BusEntry> = {}): BusEntry => ({
  id: 'bus',
  protocol: 'nmea2000',
  grade: 'light',
  lengthM: 12.95,
  longestM: 13.4,
  longestDropM: 3.4,
  dropsM: 10.7,
  drops: [],
  farthestM: 18,
  devices: 9,
  len: 26,
  ends: ['bow', 'stern'],
  walk: [],
  volts: [
    { port: 'helm-screen.n2k', lowestV: 11.4, dropV: 0.3 },
    { port: 'fly-screen.n2k', lowestV: 11.2, dropV: 0.5 },
  ],
  traffic: { averagePct: 9.61, worstPct: 21, wait: { steeringMs: 4.48, anyMs: 47.36, anyFedSinglyMs: 60.8 } },
  layout: { hash: 'h', cost: 41_240_000, bound: 41_240_000, status: 'proven', work: 100, broken: [] },
  ...over,
});

/** A finding about the given things. */
export const aFinding = (id: string, over: Partial<Finding> = {}): Finding => ({
  id,
  rule: 'bus/drop-too-long',
  level: 'fault',
  about: [],
  says: 'The drop is too long.',
  ...over,
});

/** A reading that arrives by typical sheets. */
export const aReading = (over: Partial<ReadingEntry> = {}): ReadingEntry => ({
  reading: 'depth',
  at: 'helm-screen',
  must: true,
  arrives: true,
  rests: 'typical',
  by: [],
  backups: [],
  ...over,
});

/** A plan with one backbone and nothing found. */
export const aPlan = (over: Partial<Plan> = {}): Plan => ({
  ...emptyPlan,
  buses: [aBus()],
  findings: [],
  ...over,
});
