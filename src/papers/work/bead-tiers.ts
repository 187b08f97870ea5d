/** One thing that stands over a line at some place. */
export interface Bead<Of> {
  readonly of: Of;
  readonly fromMm: number;
  readonly toMm: number;
}

/**
 * Lays things over a line in as few tiers as keep them apart, from left to right, the lowest tier first.
 * Gives the tier of each, from 0, in the order given; more than `most` tiers are never made: then the last takes what is left.
 */
export const beadTiers = <Of>(
  beads: readonly Bead<Of>[],
  { gapMm, most }: { readonly gapMm: number; readonly most: number },
): { readonly bead: Bead<Of>; readonly tier: number }[] => {
  const ends: number[] = [];
  return [...beads]
    .sort((one, other) => one.fromMm - other.fromMm || one.toMm - other.toMm)
    .map((bead) => {
      const free = ends.findIndex((endMm) => endMm + gapMm <= bead.fromMm);
      const tier = free >= 0 ? free : Math.min(ends.length, most - 1);
      ends[tier] = Math.max(ends[tier] ?? Number.NEGATIVE_INFINITY, bead.toMm);
      return { bead, tier };
    });
};
