import { type HullMeasuresId, hullMeasures } from '../facts/hull-measures.ts';

/** The four measures of a boat, metres. */
export interface HullMeasuresM {
  readonly lengthM: number;
  readonly beamM: number;
  readonly draftM: number;
  readonly airDraftM: number;
}

/** To five centimetres: finer would look like something somebody measured. */
const rounded = (metres: number, { leastM, mostM }: { leastM: number; mostM: number }): number =>
  Math.min(mostM, Math.max(leastM, Math.round(metres * 20) / 20));

/**
 * What a boat of this pattern usually measures, for somebody who knows only her length, or nothing yet:
 * beam = factor x L^(2/3), draft and air draft as shares of L, each to 0.05 m and within what a boat file takes.
 * Source: practice-hull-measures (common practice).
 *
 * @example suggestedMeasures({ pattern: 'sloop-deck-stepped', lengthM: 9.4 }) // beam 3.1, draft 1.6, air draft 13.65
 */
export const suggestedMeasures = ({
  pattern,
  lengthM = hullMeasures[pattern].lengthM,
}: {
  readonly pattern: HullMeasuresId;
  readonly lengthM?: number;
}): HullMeasuresM => {
  const { beamFactor, draftShare, airDraftShare } = hullMeasures[pattern];
  return {
    lengthM,
    beamM: rounded(beamFactor * Math.cbrt(lengthM * lengthM), { leastM: 0.5, mostM: 20 }),
    draftM: rounded(draftShare * lengthM, { leastM: 0.1, mostM: 10 }),
    airDraftM: rounded(airDraftShare * lengthM, { leastM: 0.5, mostM: 200 }),
  };
};
