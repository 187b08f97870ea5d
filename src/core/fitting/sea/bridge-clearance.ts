import type { BridgeDatum } from '../../facts/bridge-datums.ts';

/** A bridge as charted, and a mast that is to pass under it; all lengths in one unit. */
export interface Bridge {
  /** height of the bridge over the level its chart counts from */
  readonly charted: number;
  /** that level, as the chart names it; without it nothing is computed */
  readonly datum?: BridgeDatum;
  /** how high that level lies over the level the tide is counted from */
  readonly datumAbove: number;
  readonly airDraft: number;
  /** what is to stay free above the mast */
  readonly margin: number;
}

/**
 * What is free under a bridge at a height of tide: c = charted + datum - tide. A tide above the datum makes it less than charted.
 * Undefined where nobody said which level the chart counts from.
 *
 * @example clearanceAt({ charted: 17, datum: 'hat', datumAbove: 5.6, airDraft: 16.4, margin: 1 }, 1.8) // 20.8 free, 4.4 to spare
 */
export const clearanceAt = (
  { charted, datum, datumAbove, airDraft }: Bridge,
  tide: number,
): { readonly clearance: number; readonly spare: number } | undefined => {
  if (datum === undefined) return undefined;
  const clearance = charted + datumAbove - tide;
  return { clearance, spare: clearance - airDraft };
};

/** The highest tide at which she passes with her margin free: charted + datum - air draft - margin; undefined without a datum. */
export const highestTide = ({ charted, datum, datumAbove, airDraft, margin }: Bridge): number | undefined =>
  datum === undefined ? undefined : charted + datumAbove - airDraft - margin;
