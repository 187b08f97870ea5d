import { breaksA, interruptNeededA, interruptTable, lithiumBreaks } from '../facts/interrupt.ts';

/** A bank as far as the fault current it can push goes. */
export interface FaultSource {
  /** cold-cranking amperes of everything connected in parallel */
  readonly cca: number;
  readonly capacityAh: number;
  readonly lithium: boolean;
  /** the short-circuit current its maker states, of the whole bank */
  readonly statedA?: number;
}

/**
 * Fault current protection must break. `by`: the table, what the bank states, or lithium; `unknown` where the newer text
 * asks for a stated figure and there is none, so that the table is only the least.
 */
export interface InterruptNeeded {
  readonly amps: number;
  readonly by: 'table' | 'stated' | 'lithium' | 'unknown';
}

/**
 * Fault current that protection must be able to break, A (ABYC E-11, second-hand): by the table, for a large bank at the
 * main by the short-circuit current it states, 20 kA where that is above 10 kA, and 20 kA at a lithium bank. A branch
 * stands behind its main, so the table is its rule.
 *
 * @example interruptNeeded({ position: 'main', cca: 1800, capacityAh: 400, lithium: false }) // 5000 A by the table
 */
export const interruptNeeded = ({
  position,
  cca,
  capacityAh,
  lithium,
  statedA,
}: FaultSource & { readonly position: 'main' | 'branch' }): InterruptNeeded => {
  const tableA = interruptNeededA({ cca, position });
  if (position === 'branch') return { amps: tableA, by: 'table' };
  if (lithium) return { amps: lithiumBreaks.value, by: 'lithium' };
  const { newerTextAboveCca, newerTextAboveAh, largestClassAboveA, largestClassA } = interruptTable;
  if (cca <= newerTextAboveCca && capacityAh <= newerTextAboveAh) return { amps: tableA, by: 'table' };
  if (statedA === undefined) return { amps: tableA, by: 'unknown' };
  const askedA = statedA > largestClassAboveA ? Math.max(statedA, largestClassA) : statedA;
  return askedA > tableA ? { amps: askedA, by: 'stated' } : { amps: tableA, by: 'table' };
};

/** Whether a kind of fuse can break a fault current; 'unknown' where nobody has printed what that kind breaks. */
export const breaksEnough = ({
  family,
  neededA,
}: {
  readonly family: string;
  readonly neededA: number;
}): 'yes' | 'no' | 'unknown' => {
  const amps = new Map<string, { readonly amps: number }>(Object.entries(breaksA)).get(family)?.amps;
  if (amps === undefined) return 'unknown';
  return amps >= neededA ? 'yes' : 'no';
};
