import { type CoaxKind, type CoaxKindId, coaxKinds, radioMhz } from '../facts/coax.ts';

const ftPerM = 1 / 0.3048;

type Point = readonly [mhz: number, db: number];

/** Beyond its points a loss is taken to grow with sqrt(f), up to twice or down to half the frequency. */
const reach = 2;

const bySqrt = ([at, db]: Point, mhz: number): number | undefined =>
  mhz <= at * reach && mhz >= at / reach ? db * Math.sqrt(mhz / at) : undefined;

/**
 * Loss between two points of a table, log-log, so that the points come back unchanged; beyond them with sqrt(f) within a factor
 * of two, and nothing farther off. Points by rising frequency.
 */
export const lossByPoints = (points: readonly Point[], mhz: number): number | undefined => {
  const above = points.findIndex(([f]) => f >= mhz);
  const [high, low] = [points[above], points[above - 1]];
  if (high === undefined) {
    const last = points.at(-1);
    return last === undefined ? undefined : bySqrt(last, mhz);
  }
  if (low === undefined) return bySqrt(high, mhz);
  return low[1] * (mhz / low[0]) ** (Math.log(high[1] / low[1]) / Math.log(high[0] / low[0]));
};

/** Loss of a kind by its data sheet or its table, dB for 100 m: constants before points. */
export const dbPer100M = (id: CoaxKindId, mhz: number): number | undefined => {
  const kind: CoaxKind = coaxKinds[id];
  if (kind.constants !== undefined) {
    const { k1, k2 } = kind.constants;
    return (k1 * Math.sqrt(mhz) + k2 * mhz) * ftPerM;
  }
  return kind.points === undefined ? undefined : lossByPoints(kind.points.dbPer100M, mhz);
};

/** Loss of a kind of which only the name is known, dB for 100 m: the worst of several prints near 157 MHz, with sqrt(f) beside that. */
export const dbPer100MByName = (id: CoaxKindId, mhz: number): number =>
  coaxKinds[id].byName.dbPer100M *
  (Math.abs(mhz - radioMhz.voice.value) < 10 ? 1 : Math.sqrt(mhz / radioMhz.voice.value));

/** Watts that are left after a loss. */
export const wattsAfter = (powerW: number, lossDb: number): number => powerW * 10 ** (-lossDb / 10);

/** The share of its range that a weak signal keeps after a loss; inside the horizon the loss hardly shows. */
export const rangeShare = (lossDb: number): number => 10 ** (-lossDb / 40);

/** The longest run that stays within a limit with so many joints, m. */
export const longestRunM = (run: {
  readonly dbPer100M: number;
  readonly joints: number;
  readonly jointDb: number;
  readonly mostDb: number;
}): number => (100 * (run.mostDb - run.joints * run.jointDb)) / run.dbPer100M;
