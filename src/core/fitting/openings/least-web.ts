/** Solid panel that must be left between two cut-outs, mm: the larger of a least figure and so many thicknesses. */
export const leastWebMm = ({
  thicknessMm,
  leastMm,
  thicknesses,
}: {
  readonly thicknessMm: number;
  readonly leastMm: number;
  readonly thicknesses: number;
}): number => Math.max(leastMm, thicknesses * thicknessMm);
