/** Where an AIS antenna stands to a radio antenna. */
export interface AisPlace {
  readonly distanceM: number;
  readonly acrossM: number;
  readonly upM: number;
  /** between them, and on one level at the distance of the guideline: what stands on a slant is held to that */
  readonly isolationDb: number;
  readonly levelDb: number;
}

/** Distances that are asked for between antennas, m. */
export interface SpacingLimits {
  readonly shipM: number;
  readonly shipUpM: number;
  readonly apartM: number;
}

/** Nearly one above the other: within this of each other across. */
const stackedWithinM = 0.5;

/**
 * An AIS antenna beside one of a radio: the guideline is met from 10 m on one level, or 2 m one above the other, and on a
 * slant by what parts two antennas as well as 10 m do. It was written for ships, so that less is advice; under 3 m, which
 * installation books ask for, it is a doubt, and never more.
 */
export const aisVerdict = (
  place: AisPlace,
  limits: SpacingLimits,
): { verdict: 'ok' | 'advice' | 'doubt'; limitM: number } => {
  const { distanceM, acrossM, upM, isolationDb, levelDb } = place;
  if (acrossM <= stackedWithinM) return { verdict: upM >= limits.shipUpM ? 'ok' : 'doubt', limitM: limits.shipUpM };
  if (distanceM < limits.apartM) return { verdict: 'doubt', limitM: limits.apartM };
  const isMet = distanceM >= limits.shipM || (upM >= limits.shipUpM && isolationDb >= levelDb);
  return { verdict: isMet ? 'ok' : 'advice', limitM: limits.shipM };
};

/** A position antenna from one that sends. */
export const positionVerdict = (
  distanceM: number,
  { warnM, adviceM }: { readonly warnM: number; readonly adviceM: number },
): { verdict: 'ok' | 'advice' | 'doubt'; limitM: number } => {
  if (distanceM < warnM) return { verdict: 'doubt', limitM: warnM };
  return { verdict: distanceM < adviceM ? 'advice' : 'ok', limitM: adviceM };
};
