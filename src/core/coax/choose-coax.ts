import { type CoaxKindId, newCoax } from '../facts/coax.ts';
import type { CoaxRules } from './coax-limits.ts';
import { dbPer100M } from './coax-loss.ts';

/**
 * The kind of coax for a new run: the thinnest that reaches the aim with sound joints, else the best of all. Whether that
 * keeps below the most is for whoever judges the run.
 */
export const chooseCoax = (
  { lengthM, joints, mhz }: { readonly lengthM: number; readonly joints: number; readonly mhz: number },
  { newAimDb, soundDb }: CoaxRules,
): CoaxKindId => {
  const tried = newCoax.kinds.map(({ kind }) => ({
    kind,
    totalDb: ((dbPer100M(kind, mhz) ?? Number.POSITIVE_INFINITY) * lengthM) / 100 + joints * soundDb,
  }));
  const best = tried.reduce((one, other) => (other.totalDb < one.totalDb ? other : one));
  return (tried.find(({ totalDb }) => totalDb <= newAimDb) ?? best).kind;
};
