/**
 * Short-circuit current of a bank, A, from that of each battery, string by string: parallel strings add, batteries in
 * series do not, and the weakest of a string holds the others back.
 *
 * @example bankShortCircuitA([[2400, 2400], [2400, 2400], [2400, 2400]]) // 7200
 */
export const bankShortCircuitA = (stringsA: readonly (readonly number[])[]): number =>
  stringsA.reduce((sumA, batteriesA) => sumA + (batteriesA.length === 0 ? 0 : Math.min(...batteriesA)), 0);
