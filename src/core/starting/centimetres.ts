/** Measures of a pattern are given to the centimetre. */
export const centimetres = (metres: number): number => Math.round(metres * 100) / 100;
