import { conduitFill, fillVerdict, plugPassage } from '../facts/cable-work.ts';

/** Why a pipe is not plainly right: too full, a plug that may not pass, two cables above their share, three that jam. */
export type FillReason = 'fill' | 'plug' | 'two-cables' | 'jam';

/** What is made of a fill; `refused` is never said of cables that are all in already. */
export interface FillVerdict {
  readonly fillPct: number;
  /** the published share for this many cables */
  readonly sharePct: number;
  /** least bore that keeps the published share, mm */
  readonly leastBoreMm: number;
  readonly verdict: 'fits' | 'advice' | 'doubt' | 'refused';
  /** of the verdict, not of a lighter one it would have without them */
  readonly reasons: readonly FillReason[];
}

/** Diameters of what lies in a pipe and of what is to be drawn in, mm; `plugMm` the largest plug that must pass. */
export interface FillAsk {
  readonly boreMm: number;
  readonly inPlaceMm: readonly number[];
  readonly addedMm: readonly number[];
  readonly plugMm?: number;
}

/**
 * Fill of one pipe and what it means: a doubt above 40 %, refused above 60 % or when the plug certainly does not pass.
 *
 * @example fillVerdictOf({ boreMm: 25, inPlaceMm: [10.3, 10.3], addedMm: [] }).verdict // 'advice'
 */
export const fillVerdictOf = ({ boreMm, inPlaceMm, addedMm, plugMm }: FillAsk): FillVerdict => {
  const all = [...inPlaceMm, ...addedMm];
  const squares = squareSum(all);
  const fillPct = (100 * squares) / boreMm ** 2;
  const sharePct = shareOf(all.length);
  const plug = plugMm === undefined || addedMm.length === 0 ? 'yes' : plugPasses({ boreMm, inPlaceMm, plugMm });
  const { verdict, reasons } = graver({
    refused:
      addedMm.length === 0
        ? []
        : [
            ...(fillPct > fillVerdict.refuseAbovePct ? (['fill'] as const) : []),
            ...(plug === 'no' ? (['plug'] as const) : []),
          ],
    doubt: [
      ...(fillPct > fillVerdict.doubtAbovePct ? (['fill'] as const) : []),
      ...(plug === 'yes' ? [] : (['plug'] as const)),
    ],
    advice: [
      ...(all.length === 2 && fillPct > fillVerdict.adviceTwoCablesAbovePct ? (['two-cables'] as const) : []),
      ...(mayJam({ boreMm, cablesMm: all }) ? (['jam'] as const) : []),
    ],
  });
  return {
    fillPct,
    sharePct,
    leastBoreMm: Math.sqrt((100 * squares) / sharePct),
    verdict,
    reasons,
  };
};

/**
 * Whether a plug passes beside the cables in place: certainly, certainly not, or only a dummy tells.
 *
 * @example plugPasses({ boreMm: 20, inPlaceMm: [6.1], plugMm: 16 }) // 'no'
 */
export const plugPasses = ({
  boreMm,
  inPlaceMm,
  plugMm,
}: {
  readonly boreMm: number;
  readonly inPlaceMm: readonly number[];
  readonly plugMm: number;
}): 'yes' | 'perhaps' | 'no' => {
  if (plugMm > boreMm - Math.max(0, ...inPlaceMm)) return 'no';
  return plugMm > boreMm - circleRound(inPlaceMm) ? 'perhaps' : 'yes';
};

/** Circle round cables that lie side by side, mm; an estimate from three on. */
export const circleRound = (cablesMm: readonly number[]): number => {
  const [first = 0, second = 0] = [...cablesMm].sort((one, other) => other - one);
  return cablesMm.length < 3
    ? first + second
    : Math.max(first + second, plugPassage.circleOfMany * Math.sqrt(squareSum(cablesMm)));
};

/** The gravest verdict that has a reason, with its reasons. */
const graver = (
  by: Readonly<Record<'refused' | 'doubt' | 'advice', readonly FillReason[]>>,
): Pick<FillVerdict, 'verdict' | 'reasons'> => {
  const verdict = (['refused', 'doubt', 'advice'] as const).find((level) => by[level].length > 0);
  return verdict === undefined ? { verdict: 'fits', reasons: [] } : { verdict, reasons: by[verdict] };
};

const squareSum = (values: readonly number[]): number => values.reduce((sum, value) => sum + value ** 2, 0);

const shareOf = (count: number): number => {
  if (count < 2) return conduitFill.oneCablePct;
  return count === 2 ? conduitFill.twoCablesPct : conduitFill.morePct;
};

/** Three cables of one size that roll into a row across the pipe wedge there. */
const mayJam = ({ boreMm, cablesMm }: { readonly boreMm: number; readonly cablesMm: readonly number[] }): boolean => {
  const [first, second, third, ...more] = cablesMm;
  if (first === undefined || third === undefined || more.length > 0 || first !== second || first !== third)
    return false;
  const [least, most] = conduitFill.jamRatio;
  return boreMm / first >= least && boreMm / first <= most;
};
