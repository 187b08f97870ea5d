import { summedDropWarn } from '../facts/drop-limits.ts';
import { dropByOhmV } from './drop-by-ohm.ts';
import { within } from './within.ts';

/** One cable of the way to a unit; `loopM` out and back, `ohmPerKm` of one conductor. */
export interface PathSegment {
  readonly currentA: number;
  readonly loopM: number;
  readonly ohmPerKm: number;
}

interface Lost {
  readonly dropV: number;
  /** of the nominal voltage */
  readonly dropPct: number;
}

/** What is lost in each cable and in all; `above` where the sum is more than the 3 % that is warned of. */
export interface PathDrop extends Lost {
  readonly segments: readonly Lost[];
  readonly above: boolean;
}

/**
 * Volts lost from the source to a unit: the rules hold feeder and branch each alone against their limit, but the unit feels
 * the sum.
 */
export const pathDrop = ({
  nominalV,
  segments,
}: {
  readonly nominalV: number;
  readonly segments: readonly PathSegment[];
}): PathDrop => {
  const lost = (dropV: number): Lost => ({ dropV, dropPct: (100 * dropV) / nominalV });
  const drops = segments.map(dropByOhmV);
  const sum = lost(drops.reduce((sumV, dropV) => sumV + dropV, 0));
  return { ...sum, segments: drops.map(lost), above: !within({ value: sum.dropPct, limit: summedDropWarn.value }) };
};
