import type { MmShape } from '../../fits-shape.ts';
import { shapeBounds } from './shape-bounds.ts';
import { touchingMm } from './sticks-out.ts';

/** The next whole millimetre; so much less than a hair above one is that one. */
const wholeUp = (mm: number): number => Math.ceil(mm - touchingMm);

/**
 * The least rectangle in whole millimetres that reaches over every hole by the overlap, and round every bezel by what the screws
 * of the plate take.
 *
 * @example plateBounds({ holes: [hole], overlapMm: 20, bezels: [], roundBezelMm: 16 }) // 240 x 160 over 200 x 120
 */
export const plateBounds = ({
  holes,
  overlapMm,
  bezels,
  roundBezelMm,
}: {
  readonly holes: readonly MmShape[];
  readonly overlapMm: number;
  readonly bezels: readonly MmShape[];
  readonly roundBezelMm: number;
}): MmShape => {
  const reaches = [
    ...holes.map((shape) => ({ ...shapeBounds(shape), by: overlapMm })),
    ...bezels.map((shape) => ({ ...shapeBounds(shape), by: roundBezelMm })),
  ];
  const left = Math.min(...reaches.map((one) => one.left - one.by));
  const right = Math.max(...reaches.map((one) => one.right + one.by));
  const below = Math.min(...reaches.map((one) => one.below - one.by));
  const above = Math.max(...reaches.map((one) => one.above + one.by));
  return {
    shape: 'rectangle',
    xMm: (left + right) / 2,
    yMm: (below + above) / 2,
    widthMm: wholeUp(right - left),
    heightMm: wholeUp(above - below),
  };
};
