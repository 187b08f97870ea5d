import type { FittingPart } from './plan-fitting.ts';

/** Fitting left out of a plan. */
export const notFitted = (): FittingPart => ({
  sites: [],
  coax: [],
  spacings: [],
  scanners: [],
  fits: [],
  plates: [],
});
