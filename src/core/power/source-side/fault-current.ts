/**
 * Current of a dead short at the end of a wire, A, from that at the battery: I = V / (V / I_battery + R_loop). The battery's own
 * resistance follows from what it gives when shorted at its poles.
 *
 * @example faultCurrentA({ nominalV: 12, atSourceA: 6000, loopOhm: 0.002 }) // 3000
 */
export const faultCurrentA = ({
  nominalV,
  atSourceA,
  loopOhm,
}: {
  readonly nominalV: number;
  readonly atSourceA: number;
  readonly loopOhm: number;
}): number => (atSourceA <= 0 ? 0 : nominalV / (nominalV / atSourceA + Math.max(0, loopOhm)));
