import type { CoaxPiece, CoaxRun } from '../../aerial-shape.ts';
import type { BoatIndex } from '../../boat/boat-index.ts';
import { coaxRules, weatheredJointDb } from '../../coax/coax-limits.ts';
import { rangeShare, wattsAfter } from '../../coax/coax-loss.ts';
import type { CoaxUse } from '../../coax/coax-use.ts';
import { coaxVerdict } from '../../coax/coax-verdict.ts';
import { swrAtRadio } from '../../coax/swr.ts';
import { coaxLimits } from '../../facts/coax.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { coaxJointsOf } from '../../ways/coax-of-line.ts';
import { coaxPieces } from './coax-pieces.ts';
import type { RadioAntenna } from './radio-antennas.ts';

/** What the sums of a run come to, and what that means. */
const judged = (
  index: BoatIndex,
  { lines, pieces, use }: { lines: readonly LineEntry[]; pieces: readonly CoaxPiece[]; use: CoaxUse },
) => {
  const rules = coaxRules(index.boat);
  const joints = lines.reduce((sum, line) => sum + coaxJointsOf(index, line), 0);
  const cableDb = pieces.reduce((sum, { lossDb }) => sum + lossDb, 0);
  const soundDb = cableDb + joints * rules.soundDb;
  const weatheredDb = cableDb + joints * weatheredJointDb(rules, use.mhz);
  const kept = pieces.flatMap(({ cable }) => cable ?? []);
  const isDry = kept.every((id) => index.cables.get(id)?.coax?.joints === 'dry');
  const judgedBy = isDry ? ('sound' as const) : ('weathered' as const);
  const runUse = kept.length === 0 ? ('new' as const) : ('kept' as const);
  const totalDb = isDry ? soundDb : weatheredDb;
  return {
    joints,
    cableDb,
    soundDb,
    weatheredDb,
    use: runUse,
    judgedBy,
    verdict: coaxVerdict({ use: runUse, totalDb }, rules),
    ...(use.powerW === undefined
      ? {}
      : {
          powerW: use.powerW,
          soundW: wattsAfter(use.powerW, soundDb),
          weatheredW: wattsAfter(use.powerW, weatheredDb),
        }),
    rangeShare: rangeShare(totalDb),
    faultReadsSwr: swrAtRadio({ antennaSwr: coaxLimits.swrFaultAbove.value, cableDb: totalDb }),
  };
};

/**
 * The coax from every radio in the band of marine VHF to its antenna, by radio: what it is made of, what it loses, what
 * arrives. One without a route is left out: another part of the plan tells of that.
 */
export const coaxRuns = (index: BoatIndex, radios: readonly RadioAntenna[], lines: readonly LineEntry[]): CoaxRun[] =>
  radios.flatMap(({ radio, use, antenna, through, lines: ids }): CoaxRun[] => {
    const own = ids.flatMap((id) => lines.find((line) => line.id === id) ?? []);
    if (own.length < ids.length) return [];
    const pieces = own.flatMap((line) => coaxPieces(index, line, use.mhz));
    return [
      {
        radio,
        antenna,
        ...(through.length === 0 ? {} : { through: [...through] }),
        pieces,
        mhz: use.mhz,
        lengthM: pieces.reduce((sum, { lengthM }) => sum + lengthM, 0),
        ...judged(index, { lines: own, pieces, use }),
      },
    ];
  });
