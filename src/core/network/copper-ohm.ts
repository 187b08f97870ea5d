import { copper } from '../facts/copper.ts';

/**
 * Resistance of one copper conductor, ohm per metre: R = rho / A x (1 + alpha (T - 20)).
 * rho ohm mm²/m and alpha 1/K from facts; A in mm²; T in C, 20 where not given. Solid wire; stranded tinned wire prints
 * about 8 % more.
 */
export const copperOhmPerM = ({
  areaMm2,
  tempC = copper.referenceC.value,
}: {
  readonly areaMm2: number;
  readonly tempC?: number;
}): number => (copper.resistivity.value / areaMm2) * (1 + copper.perKelvin.value * (tempC - copper.referenceC.value));
