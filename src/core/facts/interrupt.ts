import type { Figure } from './figure.ts';
import type { SourceKey } from './sources.ts';

/**
 * Fault current a fuse or breaker must break, A, by the cold-cranking amperes of what is connected in parallel. Above
 * 2200 CCA or 500 Ah the newer text counts: at least what the battery states, 20 kA where that is above 10 kA.
 */
export const interruptTable = {
  source: 'abyc-e11',
  rows: [
    { fromCca: 0, mainA: 1500, branchA: 750 },
    { fromCca: 651, mainA: 3000, branchA: 1500 },
    { fromCca: 1101, mainA: 5000, branchA: 2500 },
  ],
  newerTextAboveCca: 2200,
  newerTextAboveAh: 500,
  /** a bank that states more than this wants the largest class */
  largestClassAboveA: 10_000,
  largestClassA: 20_000,
} as const;

interface Breaks {
  readonly amps: number;
  readonly source: SourceKey;
}

/** Fault current a kind of fuse can break without bursting, A at up to 32 V. */
export const breaksA = {
  blade: { amps: 1000, source: 'practice-device-aic' },
  'small-bolt-down': { amps: 1000, source: 'practice-device-aic' },
  'large-bolt-down': { amps: 2000, source: 'practice-device-aic' },
  anl: { amps: 6000, source: 'memory-device-aic' },
  /** at 14 V */
  'terminal-post': { amps: 10_000, source: 'memory-device-aic' },
  'class-t': { amps: 20_000, source: 'practice-device-aic' },
} as const satisfies Record<string, Breaks>;

/** A lithium bank wants protection at the battery that can break this. */
export const lithiumBreaks = { value: 20_000, unit: 'A', source: 'practice-fault-current' } as const satisfies Figure;

/** Fault current a source can give, A. */
export const faultCurrents = [
  { what: 'lead battery of 100 Ah', leastA: 1000, mostA: 4000, source: 'practice-fault-current' },
  { what: 'bank of lead batteries', leastA: 5000, mostA: 10_000, source: 'practice-fault-current' },
] as const;

/** The fault current that protection must break, A: main or branch, with so many cold-cranking amperes connected. */
export const interruptNeededA = ({
  cca,
  position,
}: {
  readonly cca: number;
  readonly position: 'main' | 'branch';
}): number => {
  const [first] = interruptTable.rows;
  const row = interruptTable.rows.findLast(({ fromCca }) => fromCca <= cca) ?? first;
  return position === 'main' ? row.mainA : row.branchA;
};
