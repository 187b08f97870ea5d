import { deviceFuses, fuseFamilies, fuseMargin } from '../facts/fuses.ts';
import { within } from './within.ts';

/** Fuses and breakers by family, as the table of their ratings names them. */
export type FuseFamilyId = keyof typeof fuseFamilies;

/** What a fuse must carry and protect. */
export interface FuseAsk {
  /** steady current at the lowest supply */
  readonly steadyA: number;
  /** at start or at most, for moments */
  readonly peakA?: number;
  /** the fuse the maker of the unit states */
  readonly statedA?: number;
  /** what the thinnest conductor behind it may carry for long; absent while that is still to be picked */
  readonly conductorA?: number;
  /** the ratings of a device fuse where not given */
  readonly family?: FuseFamilyId;
}

/** A fuse, and what it was picked by: the load, or the maker's own figure. */
export interface FusePick {
  readonly fits: true;
  readonly ratingA: number;
  /** 1.25 x the steady current: the least a fuse may have by the load */
  readonly targetA: number;
  /** of the slow type, because a peak goes above the rating */
  readonly slow: boolean;
  readonly decidedBy: 'load' | 'maker';
}

/**
 * No fuse does it. `no-rating`: none is made that large in the family, or that small. `conductor`: the conductor must carry
 * `ratingA`, so it has to be thicker. `maker`: the unit draws more for long than the fuse its maker states.
 */
export interface NoFuse {
  readonly fits: false;
  readonly why: 'no-rating' | 'conductor' | 'maker';
  readonly targetA: number;
  readonly ratingA?: number;
}

/**
 * The fuse of a load: the smallest rating made that is not below 1.25 x the steady current. A peak above it wants the slow
 * type, not a larger fuse. The maker's own figure holds where it is smaller, and where it is larger only if there is such
 * a peak, which the maker has reckoned with. Never above what the thinnest conductor carries: then the conductor grows.
 *
 * @example pickFuse({ steadyA: 4.1 }) // ratingA 7.5, targetA 5.125
 */
export const pickFuse = ({ steadyA, peakA = 0, statedA, conductorA, family }: FuseAsk): FusePick | NoFuse => {
  const stepsA: readonly number[] = (family === undefined ? deviceFuses : fuseFamilies[family]).stepsA;
  const targetA = steadyA * fuseMargin.value;
  const byLoadA = stepsA.find((stepA) => within({ value: targetA, limit: stepA }));
  if (statedA !== undefined && !within({ value: steadyA, limit: statedA }))
    return { fits: false, why: 'maker', targetA };
  const byMakerA = statedA === undefined ? undefined : makersRating({ stepsA, steadyA, statedA });
  if (statedA !== undefined && byMakerA === undefined) return { fits: false, why: 'no-rating', targetA };
  const ratingA = fuseOf({ byLoadA, byMakerA, peakA });
  if (ratingA === undefined) return { fits: false, why: 'no-rating', targetA };
  if (conductorA !== undefined && !within({ value: ratingA, limit: conductorA })) {
    return { fits: false, why: 'conductor', targetA, ratingA };
  }
  return { fits: true, ratingA, targetA, slow: peakA > ratingA, decidedBy: ratingA === byLoadA ? 'load' : 'maker' };
};

/** The largest rating made that is not above the maker's figure, and carries the unit. */
const makersRating = ({
  stepsA,
  steadyA,
  statedA,
}: {
  readonly stepsA: readonly number[];
  readonly steadyA: number;
  readonly statedA: number;
}): number | undefined =>
  stepsA.findLast((stepA) => within({ value: stepA, limit: statedA }) && within({ value: steadyA, limit: stepA }));

const fuseOf = ({
  byLoadA,
  byMakerA,
  peakA,
}: {
  readonly byLoadA: number | undefined;
  readonly byMakerA: number | undefined;
  readonly peakA: number;
}): number | undefined => {
  if (byLoadA === undefined || byMakerA === undefined) return byMakerA ?? byLoadA;
  return peakA > byLoadA ? byMakerA : Math.min(byLoadA, byMakerA);
};
