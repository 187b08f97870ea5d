import { boxHeat } from '../../facts/opening-figures.ts';

/** How much warmer it gets in a closed box than around it, K: Q = h A dT. */
export const boxRiseK = ({ powerW, areaM2 }: { readonly powerW: number; readonly areaM2: number }): number =>
  powerW / (areaM2 * boxHeat.coefficient.value);
