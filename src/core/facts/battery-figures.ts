import type { SourceKey } from './sources.ts';

interface BatteryFigures {
  /** share of its Ah that is used before it is charged again */
  readonly usable: number;
  /** Ah out for each Ah in */
  readonly coulombic: number;
  readonly energy: number;
  readonly source: SourceKey;
}

/** What a bank gives and takes, by chemistry. Charging by engine, only about 30 % of a lead bank is really used. */
export const batteryFigures = {
  lead: { usable: 0.5, coulombic: 0.85, energy: 0.7, source: 'practice-battery' },
  lifepo4: { usable: 0.8, coulombic: 0.97, energy: 0.94, source: 'memory-battery' },
} as const satisfies Record<string, BatteryFigures>;

interface Peukert {
  readonly least: number;
  readonly most: number;
  readonly source: SourceKey;
}

/** Peukert's exponent by chemistry: t = H (C / (I H))^k, C at the H-hour rate; usable Ah are capped at C. */
export const peukertExponents = {
  agm: { least: 1.05, most: 1.15, source: 'practice-battery' },
  gel: { least: 1.1, most: 1.25, source: 'practice-battery' },
  flooded: { least: 1.2, most: 1.6, source: 'practice-battery' },
  lifepo4: { least: 1.02, most: 1.05, source: 'memory-battery' },
  unknown: { least: 1.25, most: 1.25, source: 'practice-battery' },
} as const satisfies Record<string, Peukert>;
