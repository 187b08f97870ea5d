import type { Opening } from '../../boat/opening.ts';
import { airGaps } from '../../facts/opening-figures.ts';
import type { FitEntry, MmShape } from '../../fits-shape.ts';
import { boxRiseK } from './box-heat.ts';
import type { FaceSheet } from './opening-case.ts';
import { shapeBounds } from './shape-bounds.ts';

/** Watts are those at this voltage where a sheet gives amperes and no voltage. */
const usualV = 12;

const mostW = ({ power = [] }: FaceSheet): number =>
  power.reduce((sum, { max, unit, atV = usualV }) => sum + (unit === 'W' ? max : max * atV), 0);

/** How much warmer a closed room behind gets; undefined where it is not closed, or its sizes are not known. */
export const heatBehind = (behind: Opening['behind'], sheet: FaceSheet): FitEntry['heat'] | undefined => {
  const { air, depthMm, widthMm, heightMm } = behind ?? {};
  const powerW = mostW(sheet);
  if (air !== 'closed' || powerW === 0) return undefined;
  if (depthMm === undefined || widthMm === undefined || heightMm === undefined) return undefined;
  const areaM2 = (2 * (widthMm * heightMm + widthMm * depthMm + heightMm * depthMm)) / 1e6;
  return { powerW, areaM2, riseK: boxRiseK({ powerW, areaM2 }) };
};

/** Air left beside and above a body in the room behind, which lies about the middle of the hole. */
export const airBehind = (behind: Opening['behind'], cut: MmShape): FitEntry['air'] | undefined => {
  const bounds = shapeBounds(cut);
  const beside = airGaps.beside.value;
  const across = (behind?.widthMm ?? 0) / 2;
  const gaps: NonNullable<FitEntry['air']> = [
    ...(behind?.widthMm === undefined
      ? []
      : [
          { side: 'left' as const, leftMm: across + bounds.left, needMm: beside },
          { side: 'right' as const, leftMm: across - bounds.right, needMm: beside },
        ]),
    ...(behind?.heightMm === undefined
      ? []
      : [{ side: 'above' as const, leftMm: behind.heightMm / 2 - bounds.above, needMm: airGaps.above.value }]),
  ];
  return gaps.length === 0 ? undefined : gaps;
};
