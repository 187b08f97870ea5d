/** Metres in a nautical mile, exact by definition. */
const mileM = 1852;

/** Knots of a speed in m/s: 1 kn = 1852/3600 m/s. */
export const knotsOfMetresPerSecond = (metresPerS: number): number => (metresPerS * 3600) / mileM;
