/**
 * Diameter of a solid wire of gauge number n: d = 0.127 mm x 92^((36 - n) / 39). Exact by the definition of the gauge.
 *
 * @example awgDiameterMm(22) // 0.6438
 */
export const awgDiameterMm = (awg: number): number => 0.127 * 92 ** ((36 - awg) / 39);

/** Copper area of gauge number n in mm²: A = pi d² / 4. */
export const awgAreaMm2 = (awg: number): number => (Math.PI * awgDiameterMm(awg) ** 2) / 4;
